/**
 * Looks for faults with files that are damaged by chance: programs that run long and are started by
 * hand, and their short forms.
 */
@NullMarked
package wickmark.cli.fuzz;

import org.jspecify.annotations.NullMarked;
