/**
 * Light and colour of the drawn pictures: linear RGB, sRGB coding, CIELAB and plain names. Written
 * apart from the program under test, so that both can be wrong only separately.
 */
@NullMarked
package wickmark.testdata.colour;

import org.jspecify.annotations.NullMarked;
