/**
 * For authors of tests: files in {@code docs/evidence}, which hold what a long run found, and are held against a short
 * run of today.
 */
@NullMarked
package headgate.verifier.evidence;

import org.jspecify.annotations.NullMarked;
