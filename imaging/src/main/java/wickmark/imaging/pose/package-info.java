/**
 * Stage 3: takes an outline and what else is known to be straight, square or evenly divided (a
 * ruler), gives the view of the paper's plane: how photo places map to it with true proportions,
 * and how uncertain that is.
 */
@NullMarked
package wickmark.imaging.pose;

import org.jspecify.annotations.NullMarked;
