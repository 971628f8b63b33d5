/**
 * For the readers of files: what a kind of file may hold, written down once. A <em>form</em> says what one JSON value
 * may be, with words and an example for people. From the same forms come the check of a file, its JSON Schema and the
 * reference pages, so that they cannot say different things. A <em>rule</em> of a form is what a schema cannot say, such
 * as that one end of an interval is not above the other.
 */
@NullMarked
package headgate.runtime.form;

import org.jspecify.annotations.NullMarked;
