/** Drawn pictures in memory and as files: JPEG, PNG and TIFF with their metadata. */
@NullMarked
package wickmark.testdata.picture;

import org.jspecify.annotations.NullMarked;
