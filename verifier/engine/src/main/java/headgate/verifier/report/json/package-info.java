/** For programs: the report as JSON, format {@code headgate.report/1}, described by a published schema. */
@NullMarked
package headgate.verifier.report.json;

import org.jspecify.annotations.NullMarked;
