/**
 * For authors of set-ups and searches: which arm serves which lanes, and where its mount is set, as a problem of whole
 * numbers. A <em>slider</em> is an arm on its rail; a <em>choice</em> is one thing that it can do, such as work on lane 3 or
 * wait lifted; a <em>stance</em> says what it fills meanwhile; a <em>pitch</em> says how near two sliders may come in their
 * stances. Nothing here knows a head, a plan or a rule.
 */
@NullMarked
package headgate.verifier.assignment;

import org.jspecify.annotations.NullMarked;
