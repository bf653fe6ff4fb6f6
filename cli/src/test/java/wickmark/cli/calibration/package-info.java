/**
 * How well pictures with known truths are measured, and how well a record's warnings and
 * confidences tell right from wrong.
 *
 * <pre>
 * mvn -q -Dquick -DskipTests -Pscore -Dscore.seed=1 verify
 * java -cp "cli/target/test-classes:testdata/target/classes:cli/target/wickmark/lib/*" \
 *     wickmark.cli.calibration.WarningTable --named --unnamed --spoilt cli/target/drawn/seed-1-117
 * </pre>
 */
@NullMarked
package wickmark.cli.calibration;

import org.jspecify.annotations.NullMarked;
