/** What a person can do so that the next picture of a strip is measured with less uncertainty. */
@NullMarked
package wickmark.core.advice;

import org.jspecify.annotations.NullMarked;
