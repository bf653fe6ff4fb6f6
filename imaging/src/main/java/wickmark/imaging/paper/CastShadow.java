package wickmark.imaging.paper;

import java.util.Arrays;
import java.util.Optional;
import wickmark.imaging.raster.Figure;
import wickmark.imaging.raster.MaskMorphology;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;

/**
 * The shadow of narrow things on the paper: a window's bars, fingers, leaves. A closing over spots
 * closes over it as well. Blank paper in and about it lies on one curve ({@link ShadowCurve}); a
 * dye lies beside that, since it takes next to nothing from one channel at least. A grey one lies
 * on it; but no spot has one even depth over so much more than a spot's size.
 */
final class CastShadow {
  /** Radius of the disk that no narrow thing's shadow contains, mm. */
  private static final double RADIUS_MM = 25;

  /** Least density of the midst in each channel. */
  private static final double DEEP = 0.06;

  /** Least part that the channel which loses least has of the one that loses most. */
  private static final double NEARLY_GREY = 0.5;

  /** Densities in the midst that differ by no more are one. */
  private static final double ALIKE = 0.06;

  /** Half the width of what is left at the edge of a wide shadow when that is closed over, mm. */
  private static final double SEAM_MM = 1;

  /** Least area of one depth that would be taken for spots, mm². */
  private static final double LEAST_MM2 = 60;

  /** Density that is no shadow yet, in the mean of the channels. */
  private static final double LIT = 0.02;

  private final ShadowCurve curve;
  private final Raster direct;

  /** 1 for blank paper of the shadow's midst. */
  private final Raster midst;

  private CastShadow(ShadowCurve curve, Raster direct, Raster midst) {
    this.curve = curve;
    this.direct = direct;
    this.midst = midst;
  }

  /**
   * Looks for one.
   *
   * @param block log light of the channels
   * @param brightest of the channels, as log light of green
   * @param tint of lit paper: red and blue against green
   * @param blob how far each block is below its surroundings, where that is narrow as a spot
   * @param mm blocks per millimetre
   */
  static Optional<CastShadow> in(
      Raster[] block, Raster valid, Raster brightest, Raster[] tint, Raster blob, double mm) {
    if (closed(blob, valid, mm) < LEAST_MM2) {
      return Optional.empty();
    }
    Raster lit = DiskClosing.of(brightest, valid, (int) Math.round(RADIUS_MM * mm));
    Raster[] loss = new Raster[3];
    for (int c = 0; c < 3; c++) {
      loss[c] = PaperBackground.difference(lit, block[c]);
    }
    for (int i = 0; i < lit.cells().length; i++) {
      loss[0].cells()[i] += tint[0].cells()[i];
      loss[2].cells()[i] += tint[1].cells()[i];
    }
    takeOffLevel(loss, valid);
    Raster grey = nearlyGrey(loss, valid);
    double[] middle = new double[3];
    Raster midst = midst(loss, grey, middle);
    if (closed(blob, midst, mm) < LEAST_MM2 || !isLarge(midst, mm)) {
      return Optional.empty();
    }
    ShadowCurve curve = ShadowCurve.to(middle);
    return Optional.of(new CastShadow(curve, direct(loss, curve, valid, midst, mm), midst));
  }

  /**
   * The area that was closed over, mm²: it is darker than its surroundings, and no seam along the
   * edge of a wide shadow.
   */
  private static double closed(Raster blob, Raster counting, double mm) {
    Raster dark = new Raster(blob.width(), blob.height());
    for (int i = 0; i < dark.cells().length; i++) {
      dark.cells()[i] = counting.cells()[i] > 0 && blob.cells()[i] > DEEP / 2 ? 1 : 0;
    }
    int n = 0;
    for (float is : MaskMorphology.eroded(dark, (int) Math.ceil(SEAM_MM * mm)).cells()) {
      n += is > 0 ? 1 : 0;
    }
    return n / (mm * mm);
  }

  /** Lit paper loses nothing: the closing rests on its brightest grains. */
  private static void takeOffLevel(Raster[] loss, Raster valid) {
    double[] values = new double[valid.cells().length];
    double[] level = new double[3];
    for (int c = 0; c < 3; c++) {
      int n = 0;
      for (int i = 0; i < values.length; i++) {
        if (valid.cells()[i] > 0
            && loss[0].cells()[i] < DEEP
            && loss[1].cells()[i] < DEEP
            && loss[2].cells()[i] < DEEP) {
          values[n++] = loss[c].cells()[i];
        }
      }
      level[c] = n == 0 ? 0 : Selection.median(values, n);
    }
    for (int c = 0; c < 3; c++) {
      for (int i = 0; i < values.length; i++) {
        loss[c].cells()[i] -= (float) level[c];
      }
    }
  }

  private static Raster nearlyGrey(Raster[] loss, Raster valid) {
    Raster grey = new Raster(valid.width(), valid.height());
    for (int i = 0; i < grey.cells().length; i++) {
      double r = loss[0].cells()[i];
      double g = loss[1].cells()[i];
      double b = loss[2].cells()[i];
      double least = Math.min(r, Math.min(g, b));
      double most = Math.max(r, Math.max(g, b));
      boolean is = valid.cells()[i] > 0 && least > DEEP && least > NEARLY_GREY * most;
      grey.cells()[i] = is ? 1 : 0;
    }
    return grey;
  }

  /** The grey places of the depth that most have. */
  private static Raster midst(Raster[] loss, Raster grey, double[] middle) {
    Raster midst = grey;
    double[] values = new double[grey.cells().length];
    for (int round = 0; round < 4; round++) {
      for (int c = 0; c < 3; c++) {
        int n = 0;
        for (int i = 0; i < values.length; i++) {
          if (midst.cells()[i] > 0) {
            values[n++] = loss[c].cells()[i];
          }
        }
        if (n == 0) {
          return midst;
        }
        middle[c] = Selection.median(values, n);
      }
      Raster alike = new Raster(grey.width(), grey.height());
      for (int i = 0; i < values.length; i++) {
        boolean is = grey.cells()[i] > 0;
        for (int c = 0; c < 3; c++) {
          is &= Math.abs(loss[c].cells()[i] - middle[c]) < ALIKE;
        }
        alike.cells()[i] = is ? 1 : 0;
      }
      midst = alike;
    }
    return midst;
  }

  private static boolean isLarge(Raster midst, double mm) {
    for (Figure figure : Figure.in(midst)) {
      if (Math.hypot(figure.columns(), figure.rows()) > 2 * PaperBackground.SPOT_RADIUS * mm
          && figure.cells().length > LEAST_MM2 * mm * mm) {
        return true;
      }
    }
    return false;
  }

  /** Part of the direct light at each place in and about the shadow, 1 elsewhere. */
  private static Raster direct(
      Raster[] loss, ShadowCurve curve, Raster valid, Raster midst, double mm) {
    int w = valid.width();
    int h = valid.height();
    Raster direct = new Raster(w, h);
    Raster paper = new Raster(w, h);
    Raster dye = new Raster(w, h);
    for (int i = 0; i < direct.cells().length; i++) {
      ShadowCurve.Place place =
          curve.at(loss[0].cells()[i], loss[1].cells()[i], loss[2].cells()[i]);
      direct.cells()[i] = (float) place.direct();
      if (valid.cells()[i] > 0 && curve.density(place.direct()) > LIT) {
        (place.isPaper() ? paper : dye).cells()[i] = 1;
      }
    }
    Raster shaded = new Raster(w, h);
    for (Figure figure : Figure.in(paper)) {
      if (Arrays.stream(figure.cells()).anyMatch(i -> midst.cells()[i] > 0)) {
        for (int i : figure.cells()) {
          shaded.cells()[i] = 1;
        }
      }
    }
    for (int step = (int) Math.round(PaperBackground.SPOT_RADIUS * mm); step > 0; step--) {
      growInto(dye, shaded);
    }
    Raster out = new Raster(w, h);
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = shaded.cells()[i] > 0 ? medianAround(direct, valid, i) : 1;
    }
    return out;
  }

  /** Of a place and its neighbours: paper's grain is no shadow, and rims stay where they are. */
  private static float medianAround(Raster in, Raster valid, int at) {
    int w = in.width();
    double[] around = new double[9];
    int n = 0;
    for (int y = Math.max(0, at / w - 1); y <= Math.min(in.height() - 1, at / w + 1); y++) {
      for (int x = Math.max(0, at % w - 1); x <= Math.min(w - 1, at % w + 1); x++) {
        if (valid.at(x, y) > 0) {
          around[n++] = in.at(x, y);
        }
      }
    }
    return (float) Selection.median(around, n);
  }

  private static void growInto(Raster dye, Raster shaded) {
    Raster around = MaskMorphology.dilated(shaded, 1);
    for (int i = 0; i < around.cells().length; i++) {
      if (around.cells()[i] > 0 && dye.cells()[i] > 0) {
        shaded.cells()[i] = 1;
      }
    }
  }

  /** The part of the direct light that is missing. */
  Raster shade() {
    Raster out = new Raster(direct.width(), direct.height());
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = Math.max(0, 1 - direct.cells()[i]);
    }
    return out;
  }

  /** The channels' log light as it would be without the shadow. */
  Raster[] takenOff(Raster[] block) {
    Raster[] out = new Raster[3];
    for (int c = 0; c < 3; c++) {
      out[c] = PaperBackground.difference(block[c], dimming(c));
    }
    return out;
  }

  /**
   * Puts the shadow on what was found without it. There is more noise in the midst, so that what
   * was found rests on brighter grains there: half of its blank paper is to be brighter.
   */
  Raster[] putOn(Raster[] light, Raster[] block) {
    Raster[] out = new Raster[3];
    double[] values = new double[midst.cells().length];
    for (int c = 0; c < 3; c++) {
      Raster dimming = dimming(c);
      int n = 0;
      out[c] = light[c].copy();
      for (int i = 0; i < values.length; i++) {
        out[c].cells()[i] += dimming.cells()[i];
        if (midst.cells()[i] > 0) {
          values[n++] = out[c].cells()[i] - block[c].cells()[i];
        }
      }
      double over = n == 0 ? 0 : Selection.median(values, n);
      for (int i = 0; i < values.length; i++) {
        out[c].cells()[i] -= (float) (over * Math.max(0, 1 - direct.cells()[i]));
      }
    }
    return out;
  }

  private Raster dimming(int channel) {
    Raster out = new Raster(direct.width(), direct.height());
    for (int i = 0; i < out.cells().length; i++) {
      double t = direct.cells()[i];
      if (t < 1) {
        out.cells()[i] = (float) curve.logLight(channel, t);
      }
    }
    return out;
  }
}
