/**
 * For the commands: one check from end to end, with the report and the files that it consists of. <b>Checked</b>: the
 * judgement and the report that came of a check.
 */
@NullMarked
package headgate.app.check;

import org.jspecify.annotations.NullMarked;
