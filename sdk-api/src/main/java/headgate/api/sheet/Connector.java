package headgate.api.sheet;

import headgate.api.annotation.ApiStatus;
import headgate.api.problem.ProblemCollector;
import headgate.api.vocabulary.ConnectorKind;
import java.util.List;
import java.util.Objects;

/**
 * One connector between arm and head.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Connector {

    private final ConnectorKind kind;
    private final String designation;

    private Connector(ConnectorKind kind, String designation) {
        this.kind = kind;
        this.designation = designation;
    }

    /**
     * Makes a connector.
     *
     * @param kind what it carries
     * @param designation its form as the trade writes it, 1 to 60 characters; an arm's connector fits if it has the
     *     same kind and designation
     * @return the connector
     * @throws headgate.api.problem.InvalidValueException if the designation is blank or too long
     */
    public static Connector of(ConnectorKind kind, String designation) {
        ProblemCollector problems = new ProblemCollector("connector");
        problems.demand(
                !designation.isBlank() && designation.length() <= 60,
                "designation",
                '"' + designation + '"',
                "must have 1 to 60 characters");
        problems.throwIfAny();
        return new Connector(Objects.requireNonNull(kind, "kind"), designation);
    }

    /** {@return what it carries} */
    public ConnectorKind kind() {
        return kind;
    }

    /** {@return its form as the trade writes it, such as {@code M12-A 5-pole 24 V}} */
    public String designation() {
        return designation;
    }

    private List<Object> parts() {
        return List.of(kind, designation);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Connector that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    /** {@return kind and designation} */
    @Override
    public String toString() {
        return kind + " " + designation;
    }
}
