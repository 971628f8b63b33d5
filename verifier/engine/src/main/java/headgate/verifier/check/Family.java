package headgate.verifier.check;

/** The families of rules, in the order in which a report shows them. */
public enum Family {
    /** What the JAR's bytes say; nothing is run. */
    PACKAGE("package", "Package", "Read from the bytes of the JAR alone; nothing of the partner's runs."),
    /** How the head answers tasks. */
    BEHAVIOUR("behaviour", "Behaviour", "How the head answers tasks, asked in a process of its own."),
    /** Whether the sheet can be true. */
    SHEET("sheet", "Sheet", "Whether what the head says of itself can be true."),
    /** Whether the head is made for what the crop plan wants. */
    PLAN("plan", "Plan", "Whether the head is made for what the crop plan wants."),
    /** Whether it bolts on and can be carried. */
    MOUNT("mount", "Mount", "Whether the head bolts on and the arm can carry it."),
    /** Whether it meets anything. */
    CLEARANCE("clearance", "Clearance", "Whether the head meets a neighbour, the frame, the ground or the crop."),
    /** Whether every lane is served. */
    ROWS("rows", "Rows", "Whether every lane of the plan has an arm that can serve it."),
    /** Whether it keeps the pace. */
    THROUGHPUT("throughput", "Throughput", "Whether the head keeps the carriage's pace."),
    /** What it does to the crop. */
    CROP("crop", "Crop", "What the head does to the crop."),
    /** Soil, draft and traction. */
    LOAD("load", "Load", "What the soil does to head, arm and carriage."),
    /** Power and energy. */
    ENERGY("energy", "Energy", "Whether the carriage can power it, and for how long."),
    /** People. */
    SAFETY("safety", "Safety", "What could hurt somebody, and what is said about it.");

    private final String id;
    private final String title;
    private final String about;

    Family(String id, String title, String about) {
        this.id = id;
        this.title = title;
        this.about = about;
    }

    /** {@return the first part of its rules' ids} */
    public String id() {
        return id;
    }

    /** {@return the heading of its section in a report} */
    public String title() {
        return title;
    }

    /** {@return one sentence on what its rules look at} */
    public String about() {
        return about;
    }
}
