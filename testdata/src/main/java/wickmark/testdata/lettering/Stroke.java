package wickmark.testdata.lettering;

/**
 * A straight piece of a letter, in units of a capital's height: x right from the word's left end, y
 * up.
 */
public record Stroke(double x1, double y1, double x2, double y2) {}
