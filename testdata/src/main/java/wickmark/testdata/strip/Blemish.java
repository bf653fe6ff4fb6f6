package wickmark.testdata.strip;

import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.truth.PointMm;

/** Something on the paper that is neither dye nor pencil; all places in strip millimetres. */
public sealed interface Blemish {

  /** A crease from one place to another, lighter on one side and darker on the other. */
  record Crease(PointMm from, PointMm to, double strength) implements Blemish {}

  /** A punched hole. */
  record Hole(PointMm centre, double radiusMm) implements Blemish {}

  /**
   * A corner cut off at 45 degrees.
   *
   * @param right whether it is on the right
   * @param upper whether it is at the top
   * @param sideMm how much of both edges it takes
   */
  record TrimmedCorner(boolean right, boolean upper, double sideMm) implements Blemish {}

  /** A dried splash with a darker rim; {@code colour} is what it leaves of the light. */
  record Stain(PointMm centre, double radiusMm, LinearRgb colour) implements Blemish {}

  /**
   * A wandering brownish line over the whole width where the solvent's dirt dried away from the
   * marked front.
   *
   * @param aboveFrontMm how far above the front it lies in the mean, mm; below 0 below it
   * @param wanderMm how far it strays from that, mm
   * @param absorbance of the line
   * @param toned change of the wetted paper's tone below it, as absorbance
   */
  record TideMark(double aboveFrontMm, double wanderMm, double absorbance, double toned)
      implements Blemish {}

  /** A piece of sticky tape, upright, between two opposite corners. */
  record Tape(PointMm from, PointMm to) implements Blemish {}

  /**
   * Ink of the given dye that was used for a line across at a height and has itself run up by so
   * many mm.
   */
  record RunningLine(double heightMm, double runMm, double absorbance, Dye dye)
      implements Blemish {}

  /** A faint trace of dye all along a lane. */
  record Streak(double xMm, double fromMm, double toMm, double absorbance, Dye dye)
      implements Blemish {}
}
