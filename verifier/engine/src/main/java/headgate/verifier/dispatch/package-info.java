/**
 * Which plant an arm takes next. A <em>job</em> is one plant that an arm may treat: from when its action can start, until
 * when it must have started, and for how long it keeps the arm busy. A <em>dispatch</em> chooses among the jobs that are
 * known. Pure functions of jobs: nothing here knows of plants, heads or carriages.
 */
@NullMarked
package headgate.verifier.dispatch;

import org.jspecify.annotations.NullMarked;
