@NullMarked
package wickmark.cli.overview;

import org.jspecify.annotations.NullMarked;
