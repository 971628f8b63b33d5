package headgate.app.doctor;

import java.util.Properties;

/** Looks at the Java that runs the program. */
final class JavaProbe {

    /** Oldest feature release whose classes the program is compiled for. */
    private static final int OLDEST = 17;

    private JavaProbe() {}

    static Diagnosis look(Properties system) {
        String seen = system.getProperty("java.vm.version") + " by " + system.getProperty("java.vendor") + " in "
                + system.getProperty("java.home");
        int feature = Runtime.Version.parse(system.getProperty("java.version")).feature();
        return feature >= OLDEST
                ? Diagnosis.good("java", seen)
                : Diagnosis.bad("java", seen, "Install a JDK 17 or newer and let JAVA_HOME name it.");
    }
}
