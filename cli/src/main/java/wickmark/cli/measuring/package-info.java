/** What the person says about a picture, and the one door to the measurement. */
@NullMarked
package wickmark.cli.measuring;

import org.jspecify.annotations.NullMarked;
