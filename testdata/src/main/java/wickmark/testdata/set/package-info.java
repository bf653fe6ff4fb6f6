/** Whole sets of pictures drawn from a seed, with their truths. */
@NullMarked
package wickmark.testdata.set;

import org.jspecify.annotations.NullMarked;
