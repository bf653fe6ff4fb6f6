/** Stage 1, the file's part: takes a picture file, gives an upright sRGB {@code Photo}. */
@NullMarked
package wickmark.cli.photo;

import org.jspecify.annotations.NullMarked;
