/**
 * How well a record's warnings tell right pictures from wrong ones, over a set with truths.
 *
 * <pre>
 * java -cp testdata/target/classes wickmark.testdata.set.DrawSet --out drawn-set --seed 1
 * java -cp "cli/target/test-classes:cli/target/wickmark/lib/*" \
 *     wickmark.cli.calibration.WarningTable drawn-set
 * </pre>
 */
@NullMarked
package wickmark.cli.calibration;

import org.jspecify.annotations.NullMarked;
