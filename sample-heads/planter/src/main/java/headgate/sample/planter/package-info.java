/**
 * A sample head for authors of heads: a planter that sets plug plants from a tray. Frame: the head frame, x forward, y
 * left, z up, origin at the centre of the mount plate. Lengths are whole micrometres and durations whole milliseconds,
 * so that every machine gets the same answer. All figures are invented for the demo.
 *
 * <p>No null marker here, unlike the other packages: a head may refer to sdk-api and listed Java classes only.
 */
package headgate.sample.planter;
