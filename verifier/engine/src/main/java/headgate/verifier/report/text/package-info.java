/** For the terminal: the report in a few lines of plain text. */
@NullMarked
package headgate.verifier.report.text;

import org.jspecify.annotations.NullMarked;
