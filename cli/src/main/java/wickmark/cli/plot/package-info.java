/** Scales of plots that the templates draw. */
@NullMarked
package wickmark.cli.plot;

import org.jspecify.annotations.NullMarked;
