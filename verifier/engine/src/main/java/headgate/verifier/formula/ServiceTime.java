package headgate.verifier.formula;

import java.util.ArrayList;
import java.util.List;

/**
 * The law of the time that one customer keeps the server busy: here, one action with its side shift. What a wait needs
 * of it is its mean and its age law F(t), the share of the mean that lies below t: the integral of P(S > u) du from 0 to
 * t over the mean.
 */
public final class ServiceTime {

    private enum Kind {
        ATOMS,
        ERLANG
    }

    /**
     * One possible service time.
     *
     * @param duration the time, s; 0 or more
     * @param weight how often it occurs, in any unit; more than 0
     */
    public record Atom(double duration, double weight) {

        /**
         * Checks the bounds.
         *
         * @param duration the time, s
         * @param weight its weight
         * @throws IllegalArgumentException if a figure is out of bounds
         */
        public Atom {
            Figures.notNegative("duration", duration, "s");
            Figures.positive("weight", weight, "");
        }
    }

    private final Kind kind;
    private final List<Atom> atoms;
    private final int stages;
    private final double mean;

    private ServiceTime(Kind kind, List<Atom> atoms, int stages, double mean) {
        this.kind = kind;
        this.atoms = List.copyOf(atoms);
        this.stages = stages;
        this.mean = mean;
    }

    /**
     * Always the same time.
     *
     * @param duration the time, s; more than 0
     * @return the law
     * @throws IllegalArgumentException if the time is out of bounds
     */
    public static ServiceTime fixed(double duration) {
        return ofAtoms(List.of(new Atom(duration, 1)));
    }

    /**
     * Exponential times.
     *
     * @param mean mean time, s; more than 0
     * @return the law
     * @throws IllegalArgumentException if the mean is out of bounds
     */
    public static ServiceTime exponential(double mean) {
        return erlang(1, mean);
    }

    /**
     * The sum of some exponential stages of the same mean: the more stages, the more regular.
     *
     * @param stages number of stages, at least 1; their squared coefficient of variation is 1 / stages
     * @param mean mean of the sum, s; more than 0
     * @return the law
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static ServiceTime erlang(int stages, double mean) {
        Figures.atLeast("stages", stages, 1);
        return new ServiceTime(Kind.ERLANG, List.of(), stages, Figures.positive("mean", mean, "s"));
    }

    /**
     * Some times with weights, such as measured action times.
     *
     * @param atoms the times; at least one, with a mean over 0; weights are scaled to a sum of 1
     * @return the law
     * @throws IllegalArgumentException if there is no atom, or all times are 0
     */
    public static ServiceTime ofAtoms(List<Atom> atoms) {
        if (atoms.isEmpty()) {
            throw new IllegalArgumentException("a service time must have at least one atom, but has none");
        }
        double total = atoms.stream().mapToDouble(Atom::weight).sum();
        List<Atom> scaled = new ArrayList<>();
        double mean = 0;
        for (Atom a : atoms) {
            scaled.add(new Atom(a.duration(), a.weight() / total));
            mean += a.duration() * a.weight() / total;
        }
        return new ServiceTime(Kind.ATOMS, scaled, 0, Figures.positive("mean service time", mean, "s"));
    }

    /**
     * Measured times, each as often as it stands there.
     *
     * @param durations the times, s; at least one
     * @return the law
     * @throws IllegalArgumentException if there is no time, or all are 0
     */
    public static ServiceTime ofSamples(double... durations) {
        List<Atom> atoms = new ArrayList<>(durations.length);
        for (double d : durations) {
            atoms.add(new Atom(d, 1));
        }
        return ofAtoms(atoms);
    }

    /** {@return the mean, s} */
    public double mean() {
        return mean;
    }

    /** {@return the squared coefficient of variation: 0 for a fixed time, 1 for exponential times} */
    public double squaredVariation() {
        if (kind == Kind.ERLANG) {
            return 1.0 / stages;
        }
        double square = 0;
        for (Atom a : atoms) {
            square += a.weight() * (a.duration() - mean) * (a.duration() - mean);
        }
        return square / (mean * mean);
    }

    /** Whether all times are equal. */
    boolean isFixed() {
        return kind == Kind.ATOMS
                && atoms.stream().allMatch(a -> a.duration() == atoms.get(0).duration());
    }

    boolean isExponential() {
        return kind == Kind.ERLANG && stages == 1;
    }

    /** The age law at t of 0 or more: from 0 to 1, concave. */
    double age(double t) {
        if (kind == Kind.ERLANG) {
            return erlangAge(t * stages / mean);
        }
        double below = 0;
        for (Atom a : atoms) {
            below += a.weight() * Math.min(t, a.duration());
        }
        return Math.min(1, below / mean);
    }

    /** The age of an Erlang time is a mixture, in equal parts, of Erlang times of 1, 2 and so on stages. */
    private double erlangAge(double x) {
        double sum = 0;
        double term = StrictMath.exp(-x);
        double tail = 0;
        for (int k = 0; k < stages; k++) {
            tail += term;
            sum += 1 - tail;
            term *= x / (k + 1);
        }
        return sum / stages;
    }
}
