/** Tests of the assembled program, started as a person starts it. */
@NullMarked
package wickmark.cli.program;

import org.jspecify.annotations.NullMarked;
