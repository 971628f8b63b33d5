package headgate.verifier.rules.clearance;

import headgate.verifier.geometry.Occupied;

/**
 * Something of the carriage that is no arm, and that an arm or a head may run into.
 *
 * @param label how reports name it
 * @param space what it fills, carriage frame
 */
record Obstacle(String label, Occupied space) {}
