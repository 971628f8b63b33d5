package headgate.verifier.formula;

/**
 * One server, customers in Poisson stream, each of whom leaves unless his service starts within a fixed time (his
 * patience): here, plants that pass an arm, and the length of their start window.
 *
 * <p>Below the patience d the workload obeys the equation of the queue without impatience. With H(t) the solution of
 * H(t) = 1 + rho (F * H)(t), F the age law of the service time, the share served is H(d) / (1 + rho H(d)). H is the
 * waiting law of the queue without impatience up to a factor, and stays finite for rho of 1 and over. For d = 0 the loss
 * is rho / (1 + rho) whatever the service law (Erlang's loss formula). The model is the constant-patience queue of Bae
 * and Kim, Queueing Systems 64 (2010) 253-265; the formula is derived here from the workload equation.
 *
 * <p>Exponential and fixed service have closed forms. Any other law is solved on a grid: with the
 * greatest and the least value that each cell allows, which bound the true loss, and with their mean.
 */
public final class BoundedWait {

    /** Beyond this the alternating series of fixed service loses too many digits. */
    private static final double SERIES_LIMIT = 12.0;

    private static final int LEAST_STEPS = 2000;
    private static final int MOST_STEPS = 20_000;
    private static final int STEPS_PER_ARRIVAL = 50;

    private final double rho;
    private final double loss;
    private final double leastLoss;
    private final double mostLoss;

    private BoundedWait(double rho, double leastLoss, double loss, double mostLoss) {
        this.rho = rho;
        this.leastLoss = leastLoss;
        this.loss = loss;
        this.mostLoss = mostLoss;
    }

    /**
     * Works out the loss.
     *
     * @param arrivalRate customers per second; 0 or more
     * @param service law of the service time
     * @param patience the longest wait, s; 0 or more
     * @return the share lost and bounds of it
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static BoundedWait of(double arrivalRate, ServiceTime service, double patience) {
        double rho = Figures.notNegative("arrival rate", arrivalRate, "1/s") * service.mean();
        double d = Figures.notNegative("patience", patience, "s");
        if (service.isExponential()) {
            return exact(rho, exponential(rho, d / service.mean()));
        }
        if (service.isFixed() && arrivalRate * d <= SERIES_LIMIT) {
            return exact(rho, fixed(rho, d / service.mean()));
        }
        return onGrid(rho, service, d);
    }

    private static BoundedWait exact(double rho, double h) {
        double loss = loss(rho, h);
        return new BoundedWait(rho, loss, loss, loss);
    }

    /** An infinite H is the limit of a server that is never idle. */
    private static double loss(double rho, double h) {
        return Double.isInfinite(h) ? 1 - 1 / rho : 1 - h / (1 + rho * h);
    }

    /** H for exponential service of mean 1: 1 + rho (e^x - 1) / (rho - 1), x = (rho - 1) t, and 1 + t at rho 1. */
    private static double exponential(double rho, double t) {
        double x = (rho - 1) * t;
        double growth = Math.abs(x) < 1e-12 ? t : StrictMath.expm1(x) / (rho - 1);
        return 1 + rho * growth;
    }

    /** H for service of length 1: the sum over k from 0 to t of (rho (k - t))^k / k! e^(-rho (k - t)). */
    private static double fixed(double rho, double t) {
        double sum = 0;
        for (int k = 0; k <= t; k++) {
            double x = rho * (k - t);
            double term = StrictMath.exp(-x);
            for (int i = 1; i <= k; i++) {
                term *= x / i;
            }
            sum += term;
        }
        return sum;
    }

    private static BoundedWait onGrid(double rho, ServiceTime service, double d) {
        double arrivals = rho * d / service.mean();
        int steps = (int) Math.min(MOST_STEPS, Math.max(LEAST_STEPS, Math.ceil(arrivals * STEPS_PER_ARRIVAL)));
        double[] mass = new double[steps + 1];
        double before = 0;
        for (int j = 1; j <= steps; j++) {
            double age = service.age(d * j / steps);
            mass[j] = age - before;
            before = age;
        }
        return new BoundedWait(
                rho, loss(rho, solve(rho, mass, 1)), loss(rho, solve(rho, mass, 0.5)), loss(rho, solve(rho, mass, 0)));
    }

    /**
     * H at the last grid point. H rises, so within a cell of ages it lies between its values at the two ends of the cell:
     * a weight of 1 takes the greater, 0 the smaller, and one half their mean, which errs by the square of the step.
     */
    private static double solve(double rho, double[] mass, double weight) {
        int steps = mass.length - 1;
        double now = rho * weight * mass[1];
        if (now >= 1) {
            // So coarse a grid bounds nothing from this side.
            return Double.POSITIVE_INFINITY;
        }
        double[] h = new double[steps + 1];
        h[0] = 1;
        for (int n = 1; n <= steps; n++) {
            double sum = 1 + rho * mass[1] * (1 - weight) * h[n - 1];
            for (int j = 2; j <= n && mass[j] > 0; j++) {
                sum += rho * mass[j] * (weight * h[n - j + 1] + (1 - weight) * h[n - j]);
            }
            h[n] = sum / (1 - now);
        }
        return h[steps];
    }

    /** {@return the offered load, arrival rate times mean service time} */
    public double offeredLoad() {
        return rho;
    }

    /** {@return the share of customers that leave unserved, 0 to 1} */
    public double loss() {
        return loss;
    }

    /** {@return a lower bound of the loss; the loss itself where there is a closed form} */
    public double leastLoss() {
        return leastLoss;
    }

    /** {@return an upper bound of the loss; the loss itself where there is a closed form} */
    public double mostLoss() {
        return mostLoss;
    }

    /** {@return the share of time that the server is busy, 0 to 1} */
    public double busyShare() {
        return Math.min(1, rho * (1 - loss));
    }
}
