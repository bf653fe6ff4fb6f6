/**
 * How well a record's warnings tell right pictures from wrong ones, over a set with truths.
 *
 * <pre>
 * java -cp testdata/target/classes wickmark.testdata.set.DrawSet --out drawn-set --seed 1
 * java -cp "cli/target/test-classes:testdata/target/classes:cli/target/wickmark/lib/*" \
 *     wickmark.cli.calibration.WarningTable --named --unnamed --spoilt drawn-set
 * </pre>
 */
@NullMarked
package wickmark.cli.calibration;

import org.jspecify.annotations.NullMarked;
