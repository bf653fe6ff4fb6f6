/** Text of any origin on its way to people. */
@NullMarked
package wickmark.cli.text;

import org.jspecify.annotations.NullMarked;
