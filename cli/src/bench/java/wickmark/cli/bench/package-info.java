/** How fast the program is: against native code, against size, against what is on the strip. */
@NullMarked
package wickmark.cli.bench;

import org.jspecify.annotations.NullMarked;
