package headgate.app.doctor;

/** Looks at the memory that this process may take. */
final class MemoryProbe {

    /** 256 MiB: a check of the demo runs in less, a whole fitting does not; measured, not derived. */
    private static final long ENOUGH = 256L << 20;

    private MemoryProbe() {}

    static Diagnosis look(long mostBytes) {
        String seen = (mostBytes >> 20) + " MiB for the program";
        return mostBytes >= ENOUGH
                ? Diagnosis.good("memory", seen)
                : Diagnosis.note("memory", seen, "Large cases may need 256 MiB; give the machine more memory.");
    }
}
