/**
 * For authors of heads: what a head is asked. Tasks are made by the verifier and by the carriage; a head only reads
 * them. Frame: the head frame, x forward, y left, z up, origin at the centre of the mount plate.
 */
@NullMarked
package headgate.api.task;

import org.jspecify.annotations.NullMarked;
