@NullMarked
package wickmark.cli.plot;

import org.jspecify.annotations.NullMarked;
