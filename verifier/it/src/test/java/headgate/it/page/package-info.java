/** The report's page in a browser, as people meet it. */
@NullMarked
package headgate.it.page;

import org.jspecify.annotations.NullMarked;
