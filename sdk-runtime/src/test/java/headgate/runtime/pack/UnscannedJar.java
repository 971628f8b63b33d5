package headgate.runtime.pack;

/** A JAR that the inspection would refuse, passed off as one that it wrote: the head process must hold without it. */
public final class UnscannedJar {

    private UnscannedJar() {}

    /**
     * Passes a JAR off as a clean one.
     *
     * @param id its plugin id
     * @param extension binary name of the head's class
     * @param bytes the JAR
     * @return the same bytes
     */
    public static CleanJar of(String id, String extension, byte[] bytes) {
        return new CleanJar(id, extension, "0".repeat(64), bytes);
    }
}
