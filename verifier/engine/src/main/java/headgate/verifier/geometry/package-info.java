/**
 * For authors of rules: what a head can occupy, and how far it stays from something else. A volume is an
 * {@link headgate.verifier.geometry.Occupied}, a set of convex prisms; a {@link headgate.verifier.geometry.Gap} is the
 * least distance of two volumes with the two places where it is met; {@link headgate.verifier.geometry.ForbiddenOffsets}
 * are the side shifts at which a required gap does not hold; {@link headgate.verifier.geometry.Shadow} is what a sensor
 * cannot see of the ground; {@link headgate.verifier.geometry.PlanArea} measures areas that overlap.
 *
 * <p>Coordinates are whole micrometres, and sums, orientations and distances are computed in whole numbers, so an answer
 * is the same on every machine. Where a value is rounded, its method says which way: gaps down, volumes and forbidden
 * sets outward. Nothing here knows a carriage or a rule.
 */
@NullMarked
package headgate.verifier.geometry;

import org.jspecify.annotations.NullMarked;
