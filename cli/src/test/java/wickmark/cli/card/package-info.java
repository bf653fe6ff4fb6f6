@NullMarked
package wickmark.cli.card;

import org.jspecify.annotations.NullMarked;
