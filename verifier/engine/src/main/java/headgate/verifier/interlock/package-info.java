/**
 * What two arms must not do at the same time. An <b>interlock</b> belongs to two arms that are too near if both act
 * anywhere, and far enough apart while at least one of them rests; a <b>zone</b> is a box of places that it closes; a
 * <b>way</b> is a straight piece of the way of a tool point.
 */
@NullMarked
package headgate.verifier.interlock;

import org.jspecify.annotations.NullMarked;
