package wickmark.core.check;

/**
 * A row that cannot be marked, or one that is missing.
 *
 * @param place file and line; the reader where a row is missing
 */
public record ReadingProblem(String place, String message) {}
