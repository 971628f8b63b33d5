package headgate.app.doctor;

/** Looks at one thing of this machine. */
@FunctionalInterface
public interface Probe {

    /** {@return what it saw; never throws} */
    Diagnosis look();
}
