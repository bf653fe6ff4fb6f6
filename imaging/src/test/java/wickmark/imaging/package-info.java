@NullMarked
package wickmark.imaging;

import org.jspecify.annotations.NullMarked;
