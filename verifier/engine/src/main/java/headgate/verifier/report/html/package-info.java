/** For people: the report as one page that needs nothing outside itself, on a screen and on paper. */
@NullMarked
package headgate.verifier.report.html;

import org.jspecify.annotations.NullMarked;
