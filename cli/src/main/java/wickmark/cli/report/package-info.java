/** The report page and the pictures in it. */
@NullMarked
package wickmark.cli.report;

import org.jspecify.annotations.NullMarked;
