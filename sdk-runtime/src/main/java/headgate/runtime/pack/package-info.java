/**
 * For the verifier and the carriage: what a head's JAR is, from its bytes alone. Nothing here loads or runs a class of
 * the package. <b>Facts</b>: what the package says and holds. <b>Problem</b>: one way in which it is not what a head's
 * package must be. <b>Clean copy</b>: a plain JAR that we write ourselves from the classes that were read; the only one
 * that is ever loaded.
 */
@NullMarked
package headgate.runtime.pack;

import org.jspecify.annotations.NullMarked;
