package headgate.verifier.replay;

/**
 * What an arm did with its time.
 *
 * @param arm its id
 * @param actions how many actions it did
 * @param acting time in actions, s
 * @param shifting time in side shifts, s
 * @param refills how often its head was filled
 */
public record ArmUse(String arm, long actions, double acting, double shifting, long refills) {

    /**
     * The share of a time in which the arm was acting or shifting.
     *
     * @param time the time, s; more than 0
     * @return the share
     */
    public double share(double time) {
        return (acting + shifting) / time;
    }
}
