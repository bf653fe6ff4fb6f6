@NullMarked
package wickmark.cli.corrections;

import org.jspecify.annotations.NullMarked;
