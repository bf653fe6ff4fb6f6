/**
 * How to lay out a strip before the run: from paper, samples and vessel to the places of baseline,
 * origins, solvent and front, and what to know of the solvent. Lengths are millimetres from the
 * paper's lower and left edge.
 */
@NullMarked
package wickmark.core.plan;

import org.jspecify.annotations.NullMarked;
