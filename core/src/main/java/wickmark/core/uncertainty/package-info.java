/**
 * Uncertainty after the GUM: standard uncertainties that combine with their correlations, budgets
 * that say where an uncertainty comes from, and the way both are printed for people.
 *
 * <p>Reference: JCGM 100:2008, Guide to the expression of uncertainty in measurement.
 */
@NullMarked
package wickmark.core.uncertainty;

import org.jspecify.annotations.NullMarked;
