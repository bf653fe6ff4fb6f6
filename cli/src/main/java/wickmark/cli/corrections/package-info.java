/** What a person corrected by hand in a report, as a file. */
@NullMarked
package wickmark.cli.corrections;

import org.jspecify.annotations.NullMarked;
