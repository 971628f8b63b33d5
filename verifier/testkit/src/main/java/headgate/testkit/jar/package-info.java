/** For tests: head packages made from source text, good ones and broken ones, without a file in version control. */
@NullMarked
package headgate.testkit.jar;

import org.jspecify.annotations.NullMarked;
