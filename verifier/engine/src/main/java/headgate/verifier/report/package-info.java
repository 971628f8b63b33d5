/**
 * For whoever shows the result of a check: the report as one immutable value, made from a judgement. It holds words and
 * figures only, in the order in which they are shown; the writers beside it ({@code json}, {@code html}, {@code text})
 * add nothing of their own. There is no clock in it and no path of the machine, so equal input gives equal reports.
 * <b>Section</b>: what one family of rules found. <b>Topic</b>: something that nobody has checked, and that a reader must
 * know of.
 */
@NullMarked
package headgate.verifier.report;

import org.jspecify.annotations.NullMarked;
