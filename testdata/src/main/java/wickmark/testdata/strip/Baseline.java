package wickmark.testdata.strip;

/**
 * The start line.
 *
 * @param heightMm height above the strip's lower edge at its middle
 * @param slopeDeg how far it rises to the right
 * @param fromMm x of its left end
 * @param toMm x of its right end
 * @param drawn whether a pencil line was drawn at all
 */
public record Baseline(
    double heightMm, double slopeDeg, double fromMm, double toMm, Lead lead, boolean drawn) {}
