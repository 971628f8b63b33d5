/** Tests of heads that misbehave, each a copy of the sample gripper with one thing put in. */
@NullMarked
package headgate.it.hostile;

import org.jspecify.annotations.NullMarked;
