/** How well a record's warnings tell right pictures from wrong ones, over a set with truths. */
@NullMarked
package wickmark.cli.calibration;

import org.jspecify.annotations.NullMarked;
