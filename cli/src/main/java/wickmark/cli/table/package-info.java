/** What is printed on the screen. */
@NullMarked
package wickmark.cli.table;

import org.jspecify.annotations.NullMarked;
