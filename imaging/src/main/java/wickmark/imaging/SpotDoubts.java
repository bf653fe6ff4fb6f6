package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.lane.DriedStain;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.spot.SpotRegion;

/** Doubts of single spots: whether they are spots, and whether one was missed. */
final class SpotDoubts {
  /** Confidence from which a spot is believed. */
  private static final double SPOT = 0.8;

  /** A spot whose centre lies below this part of the way may be what was left at the origin. */
  private static final double NEAR_ORIGIN = 0.06;

  /**
   * What is no darker than this and has less colour (CIELAB chroma) is as likely a shadow, pencil,
   * dirt or a thing: a shadow in a room takes half of the light, and hardly any dye is grey.
   */
  private static final double SHADE = 0.35;

  private static final double GREY = 4;

  /** The same at the edge of a shadow: in mixed light it has the tint of the light that is left. */
  private static final double GREY_AT_SHADOW = 8;

  /** How fast the light falls off at the edge of a shadow at least, density per millimetre. */
  private static final double SHADOW_EDGE = 0.08;

  /** A spot longer than this, mm, is more likely several that run into one another. */
  private static final double LONG_MM = 30;

  /** Part of a spot's length within another's from which the two are hardly parted. */
  private static final double WITHIN = 0.8;

  /** Least clear stain, mm², that might be a spot of its own. */
  private static final double STAIN_MM2 = 3;

  /** Part of the direct light whose lack is a shadow. */
  private static final double SHADED = 0.1;

  private final FittedLine baseline;
  private final FittedLine front;
  private final Raster lightSteepness;
  private final Raster shade;
  private final double cellsPerMm;

  /**
   * Doubts on one map.
   *
   * @param lightSteepness how fast the light changes, density per millimetre
   * @param shade part of the direct light that was missing in a shadow that was taken off
   */
  SpotDoubts(
      FittedLine baseline,
      FittedLine front,
      Raster lightSteepness,
      Raster shade,
      double cellsPerMm) {
    this.baseline = baseline;
    this.front = front;
    this.lightSteepness = lightSteepness;
    this.shade = shade;
    this.cellsPerMm = cellsPerMm;
  }

  List<Doubt> of(
      ReadingAssembly.Lanes lanes,
      Optional<LeftoverDye.Stain> leftover,
      List<DriedStain> driedStains) {
    List<String> unsure = new ArrayList<>();
    List<String> unseen = new ArrayList<>();
    List<String> low = new ArrayList<>();
    List<String> large = new ArrayList<>();
    List<String> together = new ArrayList<>();
    for (int k = 0; k < lanes.spots().size(); k++) {
      for (int i = 0; i < lanes.spots().get(k).size(); i++) {
        SpotRegion spot = lanes.spots().get(k).get(i);
        String name = lanes.names().get(k) + " spot " + (i + 1);
        double part = part(spot.centroid().x(), spot.centroid().y());
        // It was told from pencil and shadow by its colour alone.
        boolean stayed = spot.flags().contains(SpotFlag.AT_ORIGIN);
        double lengthMm = (spot.box().bottom() - spot.box().top()) / cellsPerMm;
        if (spot.flags().contains(SpotFlag.BY_HAND)) {
          if (spot.area() == 0) {
            unseen.add(name);
          }
        } else if (!stayed
            && (spot.confidence() < SPOT || isGreyAsShade(spot) || isAtShadow(spot))) {
          unsure.add(named(name, "absorbance %.2f", spot.peakAbsorbance()));
        }
        if (part < NEAR_ORIGIN && !stayed) {
          low.add(named(name, "Rf %.2f", part));
        }
        if (lengthMm > LONG_MM) {
          large.add(named(name, "%.0f mm", lengthMm));
        }
        for (int j = 0; j < i; j++) {
          if (sharedPart(spot, lanes.spots().get(k).get(j)) > WITHIN) {
            together.add(
                String.format(
                    Locale.ROOT, "%s spots %d and %d", lanes.names().get(k), j + 1, i + 1));
          }
        }
      }
    }
    List<Doubt> doubts = new ArrayList<>();
    add(
        doubts,
        "spots-unsure",
        "Perhaps no spots but a shadow, a thing, pencil or dirt: ",
        unsure,
        "Look whether there is dye; leave out what is none with --ignore.");
    add(
        doubts,
        "spots-by-hand-unseen",
        "Set by hand where no dye is seen: ",
        unseen,
        "Their colour is the paper's; look whether they are in the right place.");
    add(
        doubts,
        "spots-near-origin",
        "Close to the baseline, perhaps what was left of the sample or ran out of the line: ",
        low,
        "Look at them before their Rf is used.");
    add(
        doubts,
        "spots-long",
        "So long that several dyes may run into one another: ",
        large,
        "Look whether they are one spot each; a smaller sample or a longer run parts them.");
    add(
        doubts,
        "spots-run-together",
        "One lies within the length of the other, told apart by hue alone: ",
        together,
        "How many dyes there are and where their middles lie is uncertain by some millimetres; a"
            + " smaller sample or a longer run parts them.");
    leftover.filter(stain -> stain.areaMm2() >= STAIN_MM2).ifPresent(s -> doubts.add(stain(s)));
    driedStains.forEach(stain -> doubts.add(driedStain(stain, lanes)));
    if (most(shade, 0, 0, shade.width(), shade.height()) > SHADED) {
      doubts.add(shadow(lanes));
    }
    return doubts;
  }

  private Doubt shadow(ReadingAssembly.Lanes lanes) {
    List<String> in = new ArrayList<>();
    for (int k = 0; k < lanes.spots().size(); k++) {
      for (int i = 0; i < lanes.spots().get(k).size(); i++) {
        if (most(shade, lanes.spots().get(k).get(i).box()) > SHADED) {
          in.add(lanes.names().get(k) + " spot " + (i + 1));
        }
      }
    }
    return new Doubt(
        "shadow-taken-off",
        "The shadow of something narrow lay on the strip and was taken off; "
            + lying(in, "in it or at its edge")
            + ". Pale dyes may be missed in it, and a grey stain of one even depth would be taken"
            + " off with it: look at the picture, or take another in even light.");
  }

  private static String lying(List<String> spots, String where) {
    return spots.isEmpty()
        ? "no spot lies " + where
        : String.join(", ", spots) + (spots.size() > 1 ? " lie " : " lies ") + where;
  }

  private Doubt driedStain(DriedStain stain, ReadingAssembly.Lanes lanes) {
    List<String> on = new ArrayList<>();
    for (int k = 0; k < lanes.spots().size(); k++) {
      for (int i = 0; i < lanes.spots().get(k).size(); i++) {
        SpotRegion spot = lanes.spots().get(k).get(i);
        if (stain.holds(spot.centroid().x(), spot.centroid().y())) {
          on.add(lanes.names().get(k) + " spot " + (i + 1));
        }
      }
    }
    double x = (stain.left() + stain.right() + 1) / 2.0;
    double y = (stain.top() + stain.bottom() + 1) / 2.0;
    return new Doubt(
        "dried-stain",
        String.format(
            Locale.ROOT,
            "A thin ring of colour, as a splash leaves it when it dries, %.0f mm wide and %.0f mm"
                + " high, %.0f mm from the left edge at %.2f of the way to the front, was taken off;"
                + " %s. A dye of the ring's own colour would be taken off with it: look whether"
                + " there is one.",
            (stain.right() - stain.left() + 1) / cellsPerMm,
            (stain.bottom() - stain.top() + 1) / cellsPerMm,
            x / cellsPerMm,
            part(x, y),
            lying(on, "on it")));
  }

  /** Part of the shorter spot's length that lies within the other's. */
  private static double sharedPart(SpotRegion a, SpotRegion b) {
    if (a.flags().contains(SpotFlag.BY_HAND) || b.flags().contains(SpotFlag.BY_HAND)) {
      return 0; // whoever set them has looked
    }
    double shared =
        Math.min(a.box().bottom(), b.box().bottom()) - Math.max(a.box().top(), b.box().top());
    double shorter = Math.min(a.box().bottom() - a.box().top(), b.box().bottom() - b.box().top());
    return shorter > 0 ? shared / shorter : 0;
  }

  private static boolean isGreyAsShade(SpotRegion spot) {
    return spot.peakAbsorbance() < SHADE && chroma(spot) < GREY;
  }

  private static double chroma(SpotRegion spot) {
    return Math.hypot(spot.colour().a(), spot.colour().b());
  }

  /**
   * Whether a nearly grey spot, however deep, lies where the light falls off as at a shadow's edge.
   */
  private boolean isAtShadow(SpotRegion spot) {
    if (chroma(spot) > GREY_AT_SHADOW) {
      return false;
    }
    return most(lightSteepness, spot.box()) > SHADOW_EDGE;
  }

  private static double most(Raster raster, SpotRegion.Box box) {
    return most(raster, box.left(), box.top(), box.right(), box.bottom());
  }

  private static double most(Raster raster, double left, double top, double right, double bottom) {
    double most = 0;
    for (int y = (int) Math.max(0, top); y < Math.min(raster.height(), bottom); y++) {
      for (int x = (int) Math.max(0, left); x < Math.min(raster.width(), right); x++) {
        most = Math.max(most, raster.at(x, y));
      }
    }
    return most;
  }

  private static String named(String name, String format, double value) {
    return name + " (" + String.format(Locale.ROOT, format, value) + ")";
  }

  private static void add(
      List<Doubt> doubts, String code, String what, List<String> spots, String advice) {
    if (!spots.isEmpty()) {
      doubts.add(new Doubt(code, what + String.join(", ", spots) + ". " + advice));
    }
  }

  private Doubt stain(LeftoverDye.Stain stain) {
    return new Doubt(
        "stain-left-over",
        String.format(
            Locale.ROOT,
            "%.0f mm² of stain (absorbance up to %.2f) belong to no spot, most of it %.0f mm from"
                + " the left edge at %.2f of the way to the front. Look whether a spot was missed.",
            stain.areaMm2(),
            stain.peak(),
            stain.x() / cellsPerMm,
            part(stain.x(), stain.y())));
  }

  /** Part of the way from baseline to front. */
  private double part(double x, double y) {
    return (baseline.at(x) - y) / (baseline.at(x) - front.at(x));
  }
}
