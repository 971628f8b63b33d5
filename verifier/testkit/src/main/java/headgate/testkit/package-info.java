/**
 * For authors of heads: tests that hold a head to its contract, run with JUnit 5 in the author's own build. Start at {@link
 * headgate.testkit.HeadContract}: one line of code runs it all. {@link headgate.testkit.SpotTaskBuilder} and {@link
 * headgate.testkit.RowTaskBuilder} make single tasks for tests of your own.
 *
 * <p>Frame: the head frame, x forward, y left, z up, origin at the centre of the mount plate. SI.
 */
@NullMarked
package headgate.testkit;

import org.jspecify.annotations.NullMarked;
