/**
 * For authors of heads: shapes. An {@link headgate.api.shape.Outline} is a simple polygon seen from above, a
 * {@link headgate.api.shape.Prism} an outline over a height interval, a {@link headgate.api.shape.Body} some prisms.
 *
 * <p>Frame: ISO 8855 axes, x forward in travel, y left, z up, right-handed. Unless a member says otherwise the frame is
 * the head frame: its origin is the centre of the mount plate. Coordinates are whole micrometres.
 */
@NullMarked
package headgate.api.shape;

import org.jspecify.annotations.NullMarked;
