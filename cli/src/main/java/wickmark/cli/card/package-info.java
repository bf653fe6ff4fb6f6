/** The card that a strip is laid on for its picture, as a PDF to print. */
@NullMarked
package wickmark.cli.card;

import org.jspecify.annotations.NullMarked;
