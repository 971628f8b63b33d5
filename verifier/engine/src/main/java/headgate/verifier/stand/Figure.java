package headgate.verifier.stand;

/** Bounds of the figures that a stand is made from. */
final class Figure {

    /** Most plants per square metre: a hundred times what stands in a very weedy field. */
    static final double DENSEST = 20_000;

    private Figure() {}

    static void check(String what, double figure, double least, double most) {
        if (!(figure >= least && figure <= most)) {
            throw new IllegalArgumentException(what + " must be from " + least + " to " + most + ", not " + figure);
        }
    }
}
