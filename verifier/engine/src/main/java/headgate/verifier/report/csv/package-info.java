/** A replay as tables of comma-separated values (RFC 4180), for spreadsheets: SI units, in the columns' names. */
@NullMarked
package headgate.verifier.report.csv;

import org.jspecify.annotations.NullMarked;
