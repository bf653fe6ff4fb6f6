package wickmark.imaging.finding;

/**
 * A doubt that the reader must see.
 *
 * @param code a stable word
 * @param message a sentence with the figures, and what to do
 */
public record Doubt(String code, String message) {}
