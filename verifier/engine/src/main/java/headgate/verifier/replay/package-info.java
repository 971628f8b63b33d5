/**
 * Replays a plot: plants pass under the moving carriage, arms shift and act, and every plant that is not treated gets one
 * reason. Event by event, exact in continuous time.
 *
 * <p>Words: a <em>plant source</em> gives plants in the order of travel. A <em>target</em> is a plant that is to be
 * treated, or what is taken for one. <em>Known</em> is a target once the first image of it has been worked on. A
 * <em>start window</em> is when an action may start so that the tool is in the ground only while the plant is in reach.
 * The <em>answer book</em> holds what the heads answered; a replay that needs an answer which is not in it stops, says
 * what it wants to know, and goes on later. Frames: ground x along travel and y to the left; the carriage's foremost beam
 * is at ground x = speed times time; <em>ahead</em> is the distance along travel from a mount to a plant.
 */
@NullMarked
package headgate.verifier.replay;

import org.jspecify.annotations.NullMarked;
