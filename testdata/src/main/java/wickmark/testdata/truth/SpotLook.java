package wickmark.testdata.truth;

import wickmark.testdata.colour.Cielab;

/**
 * How a spot looks.
 *
 * @param peakAbsorbance decadic, in the channel where its dye absorbs most
 * @param visible whether it is anywhere at least 3 CIELAB units from the paper
 * @param colour plain name of the dye's colour
 * @param colourSeen plain name of the colour at its peak on this paper
 * @param mean colour of the mean reflectance over its extent
 * @param core colour at its peak
 */
public record SpotLook(
    double peakAbsorbance,
    boolean visible,
    String colour,
    String colourSeen,
    Cielab mean,
    Cielab core) {}
