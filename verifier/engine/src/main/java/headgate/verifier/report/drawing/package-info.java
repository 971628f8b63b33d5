/**
 * For the page: pictures of a carriage with its heads. A <b>scene</b> is what is there to see, in the carriage frame, in
 * whole micrometres; a <b>projection</b> looks at it from above, from behind or from the side; a <b>view</b> draws one
 * projection to scale as SVG. Colours are never the only difference: solid, hatched, dashed and dotted tell things apart
 * on paper without colour.
 */
@NullMarked
package headgate.verifier.report.drawing;

import org.jspecify.annotations.NullMarked;
