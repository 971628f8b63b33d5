package headgate.api.head;

import headgate.api.annotation.ApiStatus;
import headgate.api.sheet.HeadSheet;
import org.pf4j.ExtensionPoint;

/**
 * A tool head: what a partner implements, as a {@link SpotHead} or a {@link ContinuousHead} and never both. The class
 * is public, has a public constructor without parameters, and carries {@link org.pf4j.Extension}.
 *
 * <h2>Contract</h2>
 *
 * <ul>
 *   <li>One instance serves one arm. It is made once and called from one thread, with tasks in any order.
 *   <li>Every method is pure: the same input gives the same answer, on any machine, to a relative 1e-9. What was asked
 *       before has no effect.
 *   <li>Every method is total over the work range that the sheet declares: it returns an answer, or a refusal with a
 *       reason, and never throws or returns null.
 *   <li>No method reads or writes files, the network, the clock, the environment, system properties or standard
 *       streams; starts threads; uses randomness; or changes a static field after class initialisation.
 *   <li>An answer takes at most 5 ms once the virtual machine is warm.
 *   <li>A head refers to its own classes, to this library, to the annotation {@code org.pf4j.Extension} and to the
 *       listed members of {@code java.*} only, and its JAR holds its own classes only.
 * </ul>
 *
 * <p>Identity (id, version, provider, range of this API) stands in the JAR's manifest only.
 */
@ApiStatus(value = ApiStatus.Status.EXPERIMENTAL, since = "0.1.0")
public interface ToolHead extends ExtensionPoint {

    /** {@return what the head says of itself; the same sheet at every call} */
    HeadSheet sheet();
}
