/** A record against a new measurement of the same picture. */
@NullMarked
package wickmark.cli.reproduce;

import org.jspecify.annotations.NullMarked;
