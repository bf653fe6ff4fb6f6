/**
 * Plots for pages: what is to be drawn, in the words of a plot; the drawing library; and what makes
 * of its drawing one that a page with a strict security policy can hold.
 */
@NullMarked
package wickmark.cli.plot;

import org.jspecify.annotations.NullMarked;
