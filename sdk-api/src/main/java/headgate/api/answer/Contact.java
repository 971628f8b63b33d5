package headgate.api.answer;

import headgate.api.annotation.ApiStatus;
import java.util.Map;
import java.util.Optional;

/**
 * What a head touches during a phase. The verifier derives contact from the shape of the posture and compares: a label
 * milder than the shape is an error, and rules use the stricter of the two.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public final class Contact implements Comparable<Contact> {

    /** Neither soil nor leaves: everything is above ground and canopy. */
    public static final Contact FREE = new Contact("free", 0);

    /** Among the canopy: below the top of the crop's leaves, above the ground. */
    public static final Contact CANOPY = new Contact("canopy", 1);

    /** In the soil. The tool must then go with the ground. */
    public static final Contact SOIL = new Contact("soil", 2);

    private static final Map<String, Contact> BY_NAME = Map.of(FREE.name, FREE, CANOPY.name, CANOPY, SOIL.name, SOIL);

    private final String name;
    private final int strictness;

    private Contact(String name, int strictness) {
        this.name = name;
        this.strictness = strictness;
    }

    /**
     * Finds a contact by its name.
     *
     * @param name {@code free}, {@code canopy} or {@code soil}
     * @return the contact, or empty if the name is another
     */
    public static Optional<Contact> named(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }

    /** {@return the name} */
    public String name() {
        return name;
    }

    /**
     * The stricter of two contacts.
     *
     * @param other the other contact
     * @return whichever touches more
     */
    public Contact stricter(Contact other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** Orders from free over canopy to soil. */
    @Override
    public int compareTo(Contact other) {
        return Integer.compare(strictness, other.strictness);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Contact that && name.equals(that.name);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** {@return the name} */
    @Override
    public String toString() {
        return name;
    }
}
