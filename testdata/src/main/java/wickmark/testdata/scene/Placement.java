package wickmark.testdata.scene;

/**
 * Where a flat thing lies on the desk.
 *
 * @param xMm world x of its middle
 * @param yMm world y of its middle
 * @param angleDeg turn of its own up direction from the world's, anticlockwise
 */
public record Placement(double xMm, double yMm, double angleDeg) {}
