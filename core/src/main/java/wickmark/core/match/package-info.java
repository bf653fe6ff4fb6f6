/**
 * Which references explain an unknown.
 *
 * <p>Takes the spots of all lanes as Rf, colour and depth with their uncertainties; gives, for each
 * unknown, the sets of references that account for it, best first, what they leave unexplained,
 * which references are ruled out and why.
 *
 * <p>The model: a set of references predicts a spot for each of theirs. Each prediction either has
 * a counterpart, at a cost that grows with the square of the differences in Rf and colour over
 * their uncertainties; or has none, at a cost that is small only if the spot would be too pale to
 * see. Each spot of the unknown that nothing predicts has a cost too, and so has each reference.
 * All costs are negative logarithms of likelihood ratios, so that exp(−cost) weighs one set against
 * another.
 */
@NullMarked
package wickmark.core.match;

import org.jspecify.annotations.NullMarked;
