/**
 * What several records of the same samples say together: lines on the screen, a table for
 * spreadsheets, JSON, and a page with a plot.
 */
@NullMarked
package wickmark.cli.pool;

import org.jspecify.annotations.NullMarked;
