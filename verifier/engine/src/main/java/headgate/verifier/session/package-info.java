/** A whole check: files in, a judgement out. Reads the files, runs the head in a process of its own, and judges. */
@NullMarked
package headgate.verifier.session;

import org.jspecify.annotations.NullMarked;
