/** A plan as text and as a drawing true to scale. */
@NullMarked
package wickmark.cli.plan;

import org.jspecify.annotations.NullMarked;
