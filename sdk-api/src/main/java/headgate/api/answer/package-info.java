/**
 * For authors of heads: what a head answers. An {@link headgate.api.answer.Action} is a spot head's answer to one task,
 * an {@link headgate.api.answer.Engagement} a continuous head's. Times are seconds from the start of the action; points
 * are in the head frame.
 */
@NullMarked
package headgate.api.answer;

import org.jspecify.annotations.NullMarked;
