/** Holds the pages to the program: every command shown is run, every link leads somewhere. */
@NullMarked
package headgate.docs;

import org.jspecify.annotations.NullMarked;
