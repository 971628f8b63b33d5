package headgate.verifier.replay;

/** Where a replay is in time, and what will happen. */
final class Clock {

    final EventQueue events = new EventQueue();

    /** The instant that is worked on, s. */
    double now = Double.NEGATIVE_INFINITY;

    /** Its number. */
    long instant;

    /** Goes on to the next event. */
    void advance() {
        now = events.nextTime();
        instant++;
    }

    /** Has an arm decide at a time. */
    void wake(double time, ArmState arm) {
        // An arm that looks again at what it waits for comes to the same time again.
        if (arm.wakesAt != time || time <= now) {
            arm.wakesAt = time;
            events.wake(time, arm.index);
        }
    }

    /** Has an arm decide again within this instant, once all others have. */
    void again(ArmState arm) {
        events.wake(now, arm.index);
    }
}
