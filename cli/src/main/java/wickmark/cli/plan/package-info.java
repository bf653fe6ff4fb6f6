/**
 * How to lay out a strip before the run: from paper, samples, vessel and solvent to the places of
 * baseline, origins, solvent and front, as text and as a drawing true to scale. Lengths are
 * millimetres from the paper's lower and left edge.
 */
@NullMarked
package wickmark.cli.plan;

import org.jspecify.annotations.NullMarked;
