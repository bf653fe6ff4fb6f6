/**
 * The run record: everything worth keeping of one measured strip, and the only input of all
 * reports.
 */
@NullMarked
package wickmark.core.record;

import org.jspecify.annotations.NullMarked;
