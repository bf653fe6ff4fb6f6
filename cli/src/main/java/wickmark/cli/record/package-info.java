/** The files of a record: written whole, read with care. */
@NullMarked
package wickmark.cli.record;

import org.jspecify.annotations.NullMarked;
