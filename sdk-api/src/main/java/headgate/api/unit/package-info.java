/**
 * For authors of heads: units. Everything in this library is SI; angles are radians. {@link headgate.api.unit.Units}
 * converts figures as people write them, {@link headgate.api.unit.Micrometres} is the grid that coordinates lie on.
 */
@NullMarked
package headgate.api.unit;

import org.jspecify.annotations.NullMarked;
