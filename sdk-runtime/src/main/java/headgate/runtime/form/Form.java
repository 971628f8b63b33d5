package headgate.runtime.form;

import headgate.runtime.text.Node;

/** What one JSON value may be. Immutable. */
public sealed interface Form
        permits CountForm,
                FlagForm,
                ListForm,
                NumberForm,
                ObjectForm,
                PairForm,
                QuantityForm,
                TermForm,
                TextForm,
                TupleForm,
                WordForm {

    /**
     * Checks a value against the form, and keeps what it stands for.
     *
     * @param node the value
     * @param reading where problems, notes and values go
     * @return true if the value and everything in it is sound
     */
    boolean check(Node node, Reading reading);

    /** {@return what belongs here, for a message: with article, bounds and an example of a right value} */
    String expected();

    /** {@return an example of a right value, as JSON text} */
    String example();
}
