/**
 * For integrators and the verifier: stands, the plants of one plot with their positions, read and written as streams. A
 * <em>plant</em> is a crop plant or a weed; its position is in local metres, x along travel and y to the left of it.
 */
@NullMarked
package headgate.runtime.stand;

import org.jspecify.annotations.NullMarked;
