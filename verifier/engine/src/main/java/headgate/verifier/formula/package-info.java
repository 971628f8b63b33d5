/**
 * For authors of rules: the closed-form models that a practitioner would check by hand, one small class each, with its
 * source. Everything is SI; a class that follows a handbook in other units converts inside. A figure out of the model's
 * bounds is refused with the name of the figure, never clamped.
 */
@NullMarked
package headgate.verifier.formula;

import org.jspecify.annotations.NullMarked;
