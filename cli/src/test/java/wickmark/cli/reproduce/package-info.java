/** Comparing a record with a new measurement. */
@NullMarked
package wickmark.cli.reproduce;

import org.jspecify.annotations.NullMarked;
