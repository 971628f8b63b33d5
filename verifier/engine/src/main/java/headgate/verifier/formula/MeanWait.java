package headgate.verifier.formula;

/**
 * Mean wait for one server when all customers wait: the formula of Pollaczek and Khinchine, rho tau / (2 (1 - rho))
 * times one plus the squared coefficient of variation (R. B. Cooper, Introduction to Queueing Theory, 2nd ed. 1981, p.
 * 189).
 */
public final class MeanWait {

    private MeanWait() {}

    /**
     * Works out the mean wait.
     *
     * @param arrivalRate customers per second; 0 or more, offered load less than 1
     * @param service law of the service time
     * @return the mean time from arrival to start of service, s
     * @throws IllegalArgumentException if the rate is out of bounds, or the offered load is 1 or more
     */
    public static double seconds(double arrivalRate, ServiceTime service) {
        double rho = Figures.notNegative("arrival rate", arrivalRate, "1/s") * service.mean();
        if (rho >= 1) {
            throw new IllegalArgumentException(
                    "offered load must be less than 1, or the wait grows without end, but is " + rho);
        }
        return rho * service.mean() / (2 * (1 - rho)) * (1 + service.squaredVariation());
    }
}
