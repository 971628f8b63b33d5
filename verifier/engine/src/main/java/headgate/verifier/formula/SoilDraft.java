package headgate.verifier.formula;

/**
 * Draft of soil tools by ASABE D497: D = F (A + B S + C S^2) W T in newtons, with the speed S in km/h, the width W in
 * metres or as a number of tools or rows, and the depth T in centimetres for tillage tools and 1 for seeding tools. The
 * form and origin are in Harrigan and Rotz, Applied Engineering in Agriculture, 1995. Each figure has a band within
 * which real drafts spread.
 */
public final class SoilDraft {

    private static final double KMH_PER_MS = 3.6;
    private static final double CM_PER_M = 100;

    /** How soils are classed for draft. */
    public enum Texture {
        /** Fine: clay and silty soils. */
        FINE,
        /** Medium: loams. */
        MEDIUM,
        /** Coarse: sandy soils. */
        COARSE
    }

    /** What the width of a tool counts in. */
    public enum WidthUnit {
        /** Metres of working width. */
        METRES,
        /** Number of tools. */
        TOOLS,
        /** Number of rows. */
        ROWS
    }

    /**
     * A row of the table. Rows whose figures are from memory say so; the others were seen in transcriptions of D497.
     */
    public enum Tool {
        /** Subsoiler with narrow point. */
        SUBSOILER(WidthUnit.TOOLS, true, 226, 0, 1.8, 1, 0.70, 0.45, 0.50),
        /** Mouldboard plough. */
        MOULDBOARD_PLOUGH(WidthUnit.METRES, true, 652, 0, 5.1, 1, 0.70, 0.45, 0.40),
        /** Chisel plough with 5 cm point; soil factors and band from memory. */
        CHISEL_PLOUGH(WidthUnit.TOOLS, true, 91, 5.4, 0, 1, 0.85, 0.65, 0.50),
        /** Field cultivator, primary tillage. */
        FIELD_CULTIVATOR_PRIMARY(WidthUnit.TOOLS, true, 46, 2.8, 0, 1, 0.85, 0.65, 0.30),
        /** Field cultivator, secondary tillage. */
        FIELD_CULTIVATOR_SECONDARY(WidthUnit.TOOLS, true, 32, 1.9, 0, 1, 0.85, 0.65, 0.25),
        /** Disk bedder. */
        DISK_BEDDER(WidthUnit.ROWS, true, 185, 9.5, 0, 1, 0.88, 0.78, 0.40),
        /** Tandem disk harrow, secondary tillage. */
        DISK_HARROW(WidthUnit.METRES, true, 216, 11.2, 0, 1, 0.88, 0.78, 0.30),
        /** Row-crop cultivator with S-tines; from memory. */
        ROW_CULTIVATOR_S_TINE(WidthUnit.ROWS, true, 140, 7.0, 0, 1, 0.85, 0.65, 0.15),
        /** Row-crop cultivator with C-shanks; from memory. */
        ROW_CULTIVATOR_C_SHANK(WidthUnit.ROWS, true, 260, 13.0, 0, 1, 0.85, 0.65, 0.15),
        /** Row-crop cultivator for untilled soil; from memory. */
        ROW_CULTIVATOR_NO_TILL(WidthUnit.ROWS, true, 435, 21.8, 0, 1, 0.85, 0.65, 0.20),
        /** Rotary hoe, depth not counted; from memory. */
        ROTARY_HOE(WidthUnit.METRES, false, 600, 0, 0, 1, 1, 1, 0.30),
        /** Mounted row planter, seed only. */
        PLANTER_MOUNTED(WidthUnit.ROWS, false, 500, 0, 0, 1, 1, 1, 0.25),
        /** Drawn row planter, seed only. */
        PLANTER_DRAWN(WidthUnit.ROWS, false, 900, 0, 0, 1, 1, 1, 0.25),
        /** Drawn row planter, seed, fertiliser and herbicide. */
        PLANTER_DRAWN_FULL(WidthUnit.ROWS, false, 1550, 0, 0, 1, 1, 1, 0.25),
        /** No-till planter with one fluted coulter a row. */
        PLANTER_NO_TILL(WidthUnit.ROWS, false, 1820, 0, 0, 1, 0.96, 0.92, 0.25);

        private final WidthUnit widthUnit;
        private final boolean depthCounts;
        private final double a;
        private final double b;
        private final double c;
        private final double fine;
        private final double medium;
        private final double coarse;
        private final double band;

        Tool(
                WidthUnit widthUnit,
                boolean depthCounts,
                double a,
                double b,
                double c,
                double fine,
                double medium,
                double coarse,
                double band) {
            this.widthUnit = widthUnit;
            this.depthCounts = depthCounts;
            this.a = a;
            this.b = b;
            this.c = c;
            this.fine = fine;
            this.medium = medium;
            this.coarse = coarse;
            this.band = band;
        }

        /** {@return what the width counts in} */
        public WidthUnit widthUnit() {
            return widthUnit;
        }

        /** {@return the relative band, such as 0.25 for 25 % either way} */
        public double band() {
            return band;
        }

        private double factor(Texture texture) {
            return switch (texture) {
                case FINE -> fine;
                case MEDIUM -> medium;
                case COARSE -> coarse;
            };
        }
    }

    private SoilDraft() {}

    /**
     * Draft of a tool.
     *
     * @param tool the row of the table
     * @param texture the soil's class
     * @param speed working speed, m/s; 0 or more
     * @param width width in the tool's unit: metres, tools or rows; 0 or more
     * @param depth working depth, m; 0 or more; not used where depth does not count
     * @return the draft in the middle of the band, N
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double newtons(Tool tool, Texture texture, double speed, double width, double depth) {
        double s = Figures.notNegative("speed", speed, "m/s") * KMH_PER_MS;
        double cm = Figures.notNegative("depth", depth, "m") * CM_PER_M;
        double t = tool.depthCounts ? cm : 1;
        return tool.factor(texture)
                * (tool.a + tool.b * s + tool.c * s * s)
                * Figures.notNegative("width", width, "")
                * t;
    }

    /**
     * The draft at the upper end of the band, which strength and traction must bear.
     *
     * @param tool the row of the table
     * @param texture the soil's class
     * @param speed working speed, m/s; 0 or more
     * @param width width in the tool's unit; 0 or more
     * @param depth working depth, m; 0 or more
     * @return the draft times one plus the band, N
     * @throws IllegalArgumentException if a figure is out of bounds
     */
    public static double mostNewtons(Tool tool, Texture texture, double speed, double width, double depth) {
        return newtons(tool, texture, speed, width, depth) * (1 + tool.band);
    }
}
