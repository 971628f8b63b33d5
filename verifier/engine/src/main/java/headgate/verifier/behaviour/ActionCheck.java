package headgate.verifier.behaviour;

import java.util.List;

/** Looks at one action for one trait. */
interface ActionCheck {

    /** {@return the trait} */
    Trait trait();

    /** {@return how many things of the action it looks at; 0 if there are none} */
    long examined(Asked asked);

    /** {@return each way in which the action breaks the trait, in the order of the phases} */
    List<Violation> violations(Asked asked);
}
