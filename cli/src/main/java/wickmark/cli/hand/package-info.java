/**
 * Hand readings as people type them into a spreadsheet: from the bytes of a file to rows, each with
 * its place, and the rows that could not be read.
 */
@NullMarked
package wickmark.cli.hand;

import org.jspecify.annotations.NullMarked;
