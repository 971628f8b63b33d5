/**
 * For the program: a whole fitting against the carriage, the crop plan and the heads that it names, as a case to be
 * judged; what row spacings it serves, and how long it takes to change from one to another.
 */
@NullMarked
package headgate.verifier.fitting;

import org.jspecify.annotations.NullMarked;
