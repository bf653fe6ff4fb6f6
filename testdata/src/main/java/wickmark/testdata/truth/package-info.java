/** What is known of a drawn picture: values only, nothing here draws or measures. */
@NullMarked
package wickmark.testdata.truth;

import org.jspecify.annotations.NullMarked;
