/** The command line: commands, options, exit codes. It decides nothing about a strip. */
@NullMarked
package wickmark.cli;

import org.jspecify.annotations.NullMarked;
