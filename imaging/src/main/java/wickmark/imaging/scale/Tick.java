package wickmark.imaging.scale;

/**
 * A mark seen in the profile along an edge.
 *
 * @param index its number from the mark where the walk began
 * @param u its place along the edge in level pixels
 * @param height its darkness in grey levels
 */
record Tick(int index, double u, double height) {}
