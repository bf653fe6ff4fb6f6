/** Drawing on sheets to print: millimetres from the sheet's lower left corner, vector, as a PDF. */
@NullMarked
package wickmark.cli.pdf;

import org.jspecify.annotations.NullMarked;
