package headgate.verifier.formula;

/**
 * Erlang's formulas for several servers and Poisson arrivals (A. K. Erlang 1917). The load A is arrival rate times mean
 * service time. The loss formula holds for every service law of that mean, the delay formula for exponential service.
 */
public final class Erlang {

    private Erlang() {}

    /**
     * Share of customers lost if none can wait (Erlang B), by the recursion over servers.
     *
     * @param load offered load; 0 or more
     * @param servers number of servers; 0 or more
     * @return the share lost, 0 to 1
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double loss(double load, int servers) {
        Figures.notNegative("load", load, "");
        Figures.atLeast("servers", servers, 0);
        double b = 1;
        for (int c = 1; c <= servers; c++) {
            b = load * b / (c + load * b);
        }
        return b;
    }

    /**
     * Share of customers that must wait if all do so (Erlang C).
     *
     * @param load offered load; 0 or more, less than the number of servers
     * @param servers number of servers; at least 1
     * @return the share that waits, 0 to 1
     * @throws IllegalArgumentException if a figure is out of bounds, or the load is not less than the servers
     */
    public static double delay(double load, int servers) {
        Figures.atLeast("servers", servers, 1);
        double b = loss(load, servers);
        if (load >= servers) {
            throw new IllegalArgumentException("load must be less than the " + servers + " servers, but is " + load);
        }
        return b / (1 - load / servers * (1 - b));
    }

    /**
     * The load at which a given share is lost, by halving.
     *
     * @param loss share lost, more than 0 and less than 1
     * @param servers number of servers; at least 1
     * @return the offered load, to 1e-12 of itself
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double loadAtLoss(double loss, int servers) {
        Figures.atLeast("servers", servers, 1);
        if (!(loss > 0 && loss < 1)) {
            throw new IllegalArgumentException("loss must be more than 0 and less than 1, but is " + loss);
        }
        double low = 0;
        double high = 1;
        while (loss(high, servers) < loss) {
            high *= 2;
        }
        while (high - low > 1e-12 * high) {
            double middle = (low + high) / 2;
            if (loss(middle, servers) < loss) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
