package wickmark.cli.report;

/**
 * Which strip of its picture a report is of.
 *
 * @param number from the left, 1 or more
 * @param of how many strips there are
 */
public record StripNumber(int number, int of) {}
