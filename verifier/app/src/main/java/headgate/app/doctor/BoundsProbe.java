package headgate.app.doctor;

/** Looks whether the system bounds what a head's process uses, besides the bounds that the virtual machine keeps itself. */
final class BoundsProbe {

    private BoundsProbe() {}

    static Diagnosis look(boolean bySystem) {
        return bySystem
                ? Diagnosis.good("bounds on heads", "processor, memory and files by prlimit")
                : Diagnosis.note(
                        "bounds on heads",
                        "no prlimit: only the clock ends a head that computes without end",
                        "It comes with util-linux.");
    }
}
