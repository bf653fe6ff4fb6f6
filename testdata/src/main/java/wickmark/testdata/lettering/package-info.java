/** Letters and figures as strokes, so that pictures do not depend on a machine's fonts. */
@NullMarked
package wickmark.testdata.lettering;

import org.jspecify.annotations.NullMarked;
