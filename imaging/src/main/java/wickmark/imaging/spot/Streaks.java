package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.List;
import wickmark.imaging.raster.Selection;

/**
 * The streak that a dye leaves on its way to its spot. It is no even band: its waves must not be
 * taken for spots of the same dye.
 */
final class Streaks {
  /** Least length of a streak seen by itself, mm. */
  static final double FREE_STREAK_MM = 4;

  /** Greatest height of a streak over its peak's. */
  static final double MOST_STREAK = 0.3;

  /**
   * Cosine of the angle between the colours of a streak and of its spot at which half of it is
   * taken for the spot's.
   */
  static final double STREAK_HUE = 0.93;

  /** From that to where all of it is, and none. */
  private static final double HUE_RAMP = 0.03;

  /** Height over a streak's up to which its own unevenness goes. */
  private static final double UNEVEN_STREAK = 0.5;

  /** Mean flank of a peak that is wider than any spot, mm: a stretch of a streak may be. */
  static final double PLATEAU_MM = 6;

  /** Nothing below belongs to a streak: the stain of the origin reaches up to here, mm. */
  static final double ORIGIN_MM = 3.5;

  private final LaneProfile profile;
  private final PeakParting parting;

  Streaks(LaneProfile profile, PeakParting parting) {
    this.profile = profile;
    this.parting = parting;
  }

  /**
   * The shapes of a fit, each with the streak of its dye, measured far below its spot, where
   * nothing else lies: a fitted one would take the spot's own tail.
   */
  List<PeakShape> measured(PeakFit fit) {
    List<PeakShape> shapes = new ArrayList<>();
    for (int j = 0; j < fit.shapes().size(); j++) {
      PeakShape s = fit.shapes().get(j);
      shapes.add(new PeakShape(s.centre(), s.ahead(), s.behind(), below(fit, j)));
    }
    return shapes;
  }

  /** The height of the streak below a peak over the peak's, 0 where none is seen. */
  private double below(PeakFit fit, int j) {
    PeakShape s = fit.shapes().get(j);
    double to = s.centre() - 4 * s.behind();
    double from = Math.max(ORIGIN_MM, profile.start());
    for (PeakShape other : fit.shapes()) {
      if (other.centre() < s.centre()) {
        from = Math.max(from, other.centre() + 3 * other.ahead());
      }
    }
    if (to - from < FREE_STREAK_MM) {
      return 0;
    }
    int first = profile.sampleAt(from);
    int n = profile.sampleAt(to) - first;
    double along = 0;
    double size = 0;
    double norm = fit.height(j);
    for (int c = 0; c < 3; c++) {
      double[] v = new double[n];
      System.arraycopy(profile.density()[c], first, v, 0, n);
      double level = Selection.median(v, n);
      along += level * fit.amount()[j][c] / norm;
      size += level * level;
    }
    return size > 0 ? Math.min(MOST_STREAK, ofTheHue(along / Math.sqrt(size)) * along / norm) : 0;
  }

  /**
   * How much of a stain below a spot is taken for its streak, by the cosine of the angle between
   * their colours: the colour of what is so pale is the paper's in part, and a picture that differs
   * by noise alone must not have all of it where the other has none.
   *
   * @return 0 to 1
   */
  static double ofTheHue(double cosine) {
    return ramp((cosine - STREAK_HUE) / HUE_RAMP);
  }

  /** 0 from −1 down, 1 from 1 up, straight in between. */
  static double ramp(double value) {
    return Math.max(0, Math.min(1, (1 + value) / 2));
  }

  /**
   * The shapes of a fit without the low, wide ones behind a peak of their hue: waves of a streak
   * may have been taken for those, which then leave no part of it to be seen as a streak.
   */
  List<PeakShape> withoutPlateaus(PeakFit fit) {
    List<PeakShape> fewer = new ArrayList<>();
    for (int j = 0; j < fit.shapes().size(); j++) {
      PeakShape s = fit.shapes().get(j);
      boolean wide = s.ahead() + s.behind() > 2 * PLATEAU_MM && s.ahead() > PLATEAU_MM / 2;
      if (!wide || !isLowBehindItsLike(fit, j)) {
        fewer.add(s);
      }
    }
    return fewer;
  }

  /** Whether a peak lies on the way of one of its hue and is no higher than a streak may be. */
  private static boolean isLowBehindItsLike(PeakFit fit, int i) {
    for (int j = 0; j < fit.shapes().size(); j++) {
      if (fit.shapes().get(j).centre() > fit.shapes().get(i).centre()
          && fit.height(i) < MOST_STREAK * fit.height(j)
          && fit.colourAngle(i, j) < PeakParting.SAME_HUE) {
        return true;
      }
    }
    return false;
  }

  /** Whether a peak is no more than the unevenness of a streak of its hue that runs through it. */
  boolean isWave(PeakFit fit, int i) {
    PeakShape wave = fit.shapes().get(i);
    for (int j = 0; j < fit.shapes().size(); j++) {
      PeakShape other = fit.shapes().get(j);
      // What is seen there is mostly the streak: a wave's own colour is the paper's texture.
      if (other.centre() > wave.centre()
          && fit.height(i) < UNEVEN_STREAK * other.streak() * fit.height(j)
          && parting.seenAngle(wave, other) < PeakParting.SAME_HUE) {
        return true;
      }
    }
    return false;
  }
}
