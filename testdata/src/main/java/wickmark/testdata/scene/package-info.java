/** A painted strip on a desk or a scanner's glass, lit and seen by a camera. */
@NullMarked
package wickmark.testdata.scene;

import org.jspecify.annotations.NullMarked;
