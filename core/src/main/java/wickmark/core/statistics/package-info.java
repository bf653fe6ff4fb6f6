/**
 * Statistics of repeated and compared measurements: agreement of two methods, straight lines with
 * errors in both, means that outliers do not pull, a test for outliers, and precision between and
 * within laboratories.
 */
@NullMarked
package wickmark.core.statistics;

import org.jspecify.annotations.NullMarked;
