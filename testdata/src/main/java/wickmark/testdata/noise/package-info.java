/**
 * Chance that is the same on every machine: dice thrown from a seed, and smooth noise over a plane.
 */
@NullMarked
package wickmark.testdata.noise;

import org.jspecify.annotations.NullMarked;
