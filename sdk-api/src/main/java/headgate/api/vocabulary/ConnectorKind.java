package headgate.api.vocabulary;

import headgate.api.annotation.ApiStatus;

/** What a connector carries between arm and head. An open vocabulary: see {@link Term}. */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class ConnectorKind extends Term {

    /** Electric power. */
    public static final ConnectorKind ELECTRIC = new ConnectorKind("electric");

    /** Signals. */
    public static final ConnectorKind DATA = new ConnectorKind("data");

    /** Compressed air. */
    public static final ConnectorKind PNEUMATIC = new ConnectorKind("pneumatic");

    /** Oil under pressure. */
    public static final ConnectorKind HYDRAULIC = new ConnectorKind("hydraulic");

    /** Water for planting or rinsing. */
    public static final ConnectorKind WATER = new ConnectorKind("water");

    private ConnectorKind(String name) {
        super("connector", name);
    }

    /**
     * Names one.
     *
     * @param name lower-case words joined by hyphens, at most 60 characters
     * @return the term
     * @throws headgate.api.problem.InvalidValueException if the name has another form
     */
    public static ConnectorKind of(String name) {
        return new ConnectorKind(name);
    }
}
