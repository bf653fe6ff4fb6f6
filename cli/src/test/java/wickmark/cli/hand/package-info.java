@NullMarked
package wickmark.cli.hand;

import org.jspecify.annotations.NullMarked;
