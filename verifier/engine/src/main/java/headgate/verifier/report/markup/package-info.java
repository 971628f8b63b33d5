/** For the writers of pages and pictures: tags that nest, and text that can never be read as a tag. */
@NullMarked
package headgate.verifier.report.markup;

import org.jspecify.annotations.NullMarked;
