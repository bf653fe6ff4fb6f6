package wickmark.cli.measuring;

/** Towards which side of the upright picture the strip's baseline end lies. */
public enum BottomEnd {
  UP,
  DOWN,
  LEFT,
  RIGHT
}
