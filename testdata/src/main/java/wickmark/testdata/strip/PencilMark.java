package wickmark.testdata.strip;

import wickmark.testdata.truth.PointMm;

/** Something drawn by hand on the strip; all places in strip millimetres. */
public sealed interface PencilMark {
  Lead lead();

  /** A line from one place to another, a little unsteady. */
  record Line(PointMm from, PointMm to, Lead lead) implements PencilMark {}

  /** Words: {@code at} is the middle of their lower edge, {@code heightMm} that of a capital. */
  record Lettering(String text, PointMm at, double heightMm, double angleDeg, Lead lead)
      implements PencilMark {}

  /** A ring, as people draw round a spot. */
  record Ring(PointMm centre, double acrossMm, double alongMm, Lead lead) implements PencilMark {}
}
