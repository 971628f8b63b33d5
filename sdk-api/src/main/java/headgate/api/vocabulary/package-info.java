/**
 * For authors of heads: open vocabularies. They are value types and not enumerations, so that a later version can add a
 * word without breaking a head that was compiled before.
 */
@NullMarked
package headgate.api.vocabulary;

import org.jspecify.annotations.NullMarked;
