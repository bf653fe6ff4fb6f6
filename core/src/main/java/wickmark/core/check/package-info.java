/**
 * Marks what people read with a ruler against what the machine measured, and names the likely slip.
 *
 * <p>Takes a {@link wickmark.core.check.MeasuredSheet} (the machine's values) and {@link
 * wickmark.core.check.HandReading}s; gives a {@link wickmark.core.check.ReaderReport} for each
 * reader and the statistics of the class.
 */
@NullMarked
package wickmark.core.check;

import org.jspecify.annotations.NullMarked;
