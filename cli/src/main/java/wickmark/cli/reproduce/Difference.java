package wickmark.cli.reproduce;

/**
 * A field that is not what it was.
 *
 * @param field its path in the record, as "lanes[0].spots[1].rf"
 * @param recorded as JSON text, or "absent"
 * @param now the same of the new measurement
 */
public record Difference(String field, String recorded, String now) {}
