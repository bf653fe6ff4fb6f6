@NullMarked
package wickmark.cli.photo;

import org.jspecify.annotations.NullMarked;
