/**
 * For authors of heads: the sheet, what a head says of itself. Every figure is SI and says whether it was measured,
 * calculated or assumed. Frame: the head frame, x forward, y left, z up, origin at the centre of the mount plate.
 */
@NullMarked
package headgate.api.sheet;

import org.jspecify.annotations.NullMarked;
