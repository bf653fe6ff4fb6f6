/** Example pictures that the program carries with it. */
@NullMarked
package wickmark.cli.example;

import org.jspecify.annotations.NullMarked;
