/**
 * A developed strip, described in millimetres and painted as optical density on paper, with its
 * truth.
 */
@NullMarked
package wickmark.testdata.strip;

import org.jspecify.annotations.NullMarked;
