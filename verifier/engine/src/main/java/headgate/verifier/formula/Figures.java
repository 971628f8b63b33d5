package headgate.verifier.formula;

/** Bounds of the figures that go into a formula; the message names the figure. */
final class Figures {

    private Figures() {}

    static double positive(String name, double value, String unit) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " must be finite and more than 0 " + unit + ", but is " + value);
        }
        return value;
    }

    static double notNegative(String name, double value, String unit) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(name + " must be finite and at least 0 " + unit + ", but is " + value);
        }
        return value;
    }

    static double share(String name, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " must be from 0 to 1, but is " + value);
        }
        return value;
    }

    static int atLeast(String name, int value, int least) {
        if (value < least) {
            throw new IllegalArgumentException(name + " must be at least " + least + ", but is " + value);
        }
        return value;
    }
}
