/** Pages looked at with a real browser. */
@NullMarked
package wickmark.cli.browser;

import org.jspecify.annotations.NullMarked;
