/**
 * Stage 6: takes the density map, gives the baseline and the solvent front, and with them which end
 * of the strip is the bottom.
 *
 * <p>The pencil line is thin, grey and almost straight. The front is a pencil line where somebody
 * marked it, otherwise a faint coloured tide mark, perhaps curved, or a change of the paper's tone.
 */
@NullMarked
package wickmark.imaging.line;

import org.jspecify.annotations.NullMarked;
