/** One page over a folder of records. */
@NullMarked
package wickmark.cli.overview;

import org.jspecify.annotations.NullMarked;
