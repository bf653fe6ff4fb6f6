package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.scene.Bend;
import wickmark.testdata.scene.CameraPlan;
import wickmark.testdata.scene.Clutter;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.RulerItem;
import wickmark.testdata.scene.RulerPlan;
import wickmark.testdata.scene.StripItem;
import wickmark.testdata.strip.StripPlan;

/**
 * Lays a strip, a ruler beside it and what else is there on a desk. All is laid out around the
 * strip's middle in the strip's own directions first, then turned and moved as one.
 */
final class ThingsMaker {
  /**
   * Features that bring things which lie on others and shade them. The kinds of pictures from
   * before things did so stay as they are.
   */
  private static final Set<SceneFeature> SHADING =
      EnumSet.of(
          SceneFeature.WHITE_RULER,
          SceneFeature.RULER_UNDER_EDGE,
          SceneFeature.CLIP_ON_FRONT,
          SceneFeature.FINGER_ON_FRONT);

  private final StripPlan strip;
  private final Set<SceneFeature> features;
  private final Dice dice;
  private final double width;
  private final double height;
  private final double turnDeg;
  private final RulerPlan ruler;
  private final double side;
  private final double gap;
  private final double unusedWidth;

  ThingsMaker(StripPlan strip, Set<SceneFeature> features, long seed) {
    this.strip = strip;
    this.features = features;
    this.dice = new Dice(seed);
    this.width = strip.sheet().widthMm();
    this.height = strip.sheet().heightMm();
    this.turnDeg = turn();
    this.ruler = new RulerMaker(features, dice).ruler();
    this.side = dice.chance(0.5) ? 1 : -1;
    this.gap = gap();
    this.unusedWidth = dice.between(18, 36);
  }

  private boolean has(SceneFeature feature) {
    return features.contains(feature);
  }

  private double turn() {
    double quarter =
        has(SceneFeature.SIDEWAYS)
            ? (dice.chance(0.5) ? 90 : 270)
            : has(SceneFeature.UPSIDE_DOWN) ? 180 : 0;
    double askew =
        has(SceneFeature.TURNED)
            ? dice.between(15, 38) * (dice.chance(0.5) ? 1 : -1)
            : dice.between(-7, 7);
    return quarter + (has(SceneFeature.HELD) ? dice.between(-3, 3) : askew);
  }

  private double gap() {
    if (has(SceneFeature.ON_RULER)) {
      return -0.45 * ruler.widthMm();
    } else if (has(SceneFeature.RULER_UNDER_EDGE)) {
      return -dice.between(1.5, 4);
    }
    return has(SceneFeature.RULER_OVER_EDGE) ? -dice.between(1.2, 2.4) : dice.between(3.5, 11);
  }

  /** Returns width and height in mm that the picture must hold. */
  double[] extent() {
    double[] box = box();
    return new double[] {box[2] - box[0], box[3] - box[1]};
  }

  /** Returns the turned box around the strip and what must be seen beside it. */
  private double[] box() {
    List<double[]> points = new ArrayList<>();
    double low = has(SceneFeature.HELD) ? -height / 2 + 3 : -height / 2;
    for (double u : new double[] {-width / 2, width / 2}) {
      points.add(new double[] {u, low});
      points.add(new double[] {u, height / 2});
    }
    double beside = gap + 0.8 * ruler.widthMm();
    if (!has(SceneFeature.NO_RULER) && has(SceneFeature.RULER_ACROSS)) {
      points.add(new double[] {0, side * (height / 2 + beside)});
    } else if (!has(SceneFeature.NO_RULER)) {
      points.add(new double[] {side * (width / 2 + beside), low});
      points.add(new double[] {side * (width / 2 + beside), height / 2});
    }
    if (has(SceneFeature.UNUSED_STRIP)) {
      points.add(new double[] {-side * (width / 2 + 8 + 0.8 * unusedWidth), 0});
    }
    double[] box = {1e9, 1e9, -1e9, -1e9};
    for (double[] point : points) {
      double[] turned = turned(point[0], point[1]);
      box[0] = Math.min(box[0], turned[0]);
      box[1] = Math.min(box[1], turned[1]);
      box[2] = Math.max(box[2], turned[0]);
      box[3] = Math.max(box[3], turned[1]);
    }
    return box;
  }

  private double[] turned(double u, double v) {
    double angle = StrictMath.toRadians(turnDeg);
    return new double[] {
      u * StrictMath.cos(angle) - v * StrictMath.sin(angle),
      u * StrictMath.sin(angle) + v * StrictMath.cos(angle)
    };
  }

  /** Returns where something lies whose place is given in the strip's own directions. */
  private Placement placed(double u, double v, double angleDeg, double[] shift) {
    double[] turned = turned(u, v);
    return new Placement(turned[0] + shift[0], turned[1] + shift[1], turnDeg + angleDeg);
  }

  PhotoPlan.Things things(CameraPlan camera) {
    double[] box = box();
    double[] shift = {-(box[0] + box[2]) / 2, -(box[1] + box[3]) / 2};
    double mmPerPx = camera.distanceMm() / camera.focalPx();
    if (has(SceneFeature.HELD)) {
      // The picture's lower edge runs through the strip, below its baseline.
      shift[1] = -camera.heightPx() / 2.0 * mmPerPx - box[1];
    } else {
      shift[0] += dice.between(-3, 3);
      shift[1] += dice.between(-3, 3);
    }
    List<StripItem> strips = new ArrayList<>();
    if (!has(SceneFeature.NO_STRIP)) {
      strips.add(new StripItem(strip, placed(0, 0, 0, shift), bends(), true));
    }
    if (has(SceneFeature.UNUSED_STRIP)) {
      double tall = height * dice.between(0.7, 1);
      StripPlan other = StripMaker.unused(unusedWidth, tall, dice.seed());
      double u = -side * (width / 2 + 8 + unusedWidth / 2);
      strips.add(
          StripItem.of(other, placed(u, dice.between(-10, 10), dice.between(-4, 4), shift))
              .unused());
    }
    List<RulerItem> rulers = has(SceneFeature.NO_RULER) ? List.of() : List.of(ruler(shift));
    PhotoPlan.Things things =
        new PhotoPlan.Things(
            strips,
            rulers,
            clutter(shift, camera, mmPerPx),
            has(SceneFeature.ON_RULER) || has(SceneFeature.RULER_UNDER_EDGE));
    return SHADING.stream().anyMatch(features::contains) ? things.shadingThings() : things;
  }

  private RulerItem ruler(double[] shift) {
    // Where the ruler lies over the paper, it must not hide a spot.
    double most =
        has(SceneFeature.RULER_OVER_EDGE) || has(SceneFeature.RULER_UNDER_EDGE) ? 0.6 : 1.3;
    double askew =
        has(SceneFeature.RULER_ASKEW)
            ? dice.between(5, 9) * (dice.chance(0.5) ? 1 : -1)
            : dice.between(-most, most);
    boolean below = has(SceneFeature.ON_RULER) || has(SceneFeature.RULER_UNDER_EDGE);
    double away = has(SceneFeature.RULER_TURNED_AWAY) || below ? 180 : 0;
    double off = gap + ruler.widthMm() / 2 + (has(SceneFeature.RULER_ASKEW) ? 9 : 0);
    boolean across = has(SceneFeature.RULER_ACROSS);
    double reach = (across ? width : height) / 2;
    double slide = Math.max(0, ruler.lengthMm() / 2 - reach - 5) * dice.between(-1, 1);
    if (across) {
      // Its upper edge faces the strip: as it is below the strip, upside down above it.
      return new RulerItem(
          ruler,
          placed(slide, side * (height / 2 + off), (side < 0 ? 0 : 180) + away + askew, shift));
    }
    return new RulerItem(
        ruler, placed(side * (width / 2 + off), slide, side * 90 + away + askew, shift));
  }

  private List<Bend> bends() {
    List<Bend> bends = new ArrayList<>();
    if (has(SceneFeature.ARCHED)) {
      bends.add(new Bend(Bend.Kind.ARCH, dice.between(2, 5), dice.seed()));
    }
    if (has(SceneFeature.CUPPED)) {
      bends.add(new Bend(Bend.Kind.CUP, dice.between(2, 4), dice.seed()));
    }
    if (has(SceneFeature.BOWED)) {
      bends.add(new Bend(Bend.Kind.BOW, dice.between(1, 3), dice.seed()));
    }
    if (has(SceneFeature.COCKLED)) {
      bends.add(new Bend(Bend.Kind.COCKLE, dice.between(0.7, 2), dice.seed()));
    }
    if (has(SceneFeature.LIFTED_CORNER)) {
      bends.add(new Bend(Bend.Kind.CORNER, dice.between(5, 9), dice.seed()));
    }
    if (has(SceneFeature.HUNG)) {
      bends.add(new Bend(Bend.Kind.HUNG, dice.between(2, 5), dice.seed()));
    }
    if (has(SceneFeature.RULER_UNDER_EDGE)) {
      Bend.Kind kind = side < 0 ? Bend.Kind.LEFT_SIDE : Bend.Kind.RIGHT_SIDE;
      bends.add(new Bend(kind, ruler.thicknessMm(), dice.seed()));
    }
    return bends;
  }

  private List<Clutter> clutter(double[] shift, CameraPlan camera, double mmPerPx) {
    List<Clutter> clutter = new ArrayList<>();
    double halfX = camera.widthPx() / 2.0 * mmPerPx;
    double halfY = camera.heightPx() / 2.0 * mmPerPx;
    if (has(SceneFeature.COIN)) {
      clutter.add(
          beside(
              Clutter.Kind.DISC,
              dice.pick(List.of(LinearRgb.ofSrgb(206, 178, 110), LinearRgb.ofSrgb(182, 184, 186))),
              shift,
              halfX,
              halfY));
    }
    if (has(SceneFeature.PEN)) {
      clutter.add(
          beside(
              Clutter.Kind.PEN,
              dice.pick(
                  List.of(
                      LinearRgb.ofSrgb(30, 60, 150),
                      LinearRgb.ofSrgb(180, 30, 36),
                      LinearRgb.ofSrgb(40, 40, 44))),
              shift,
              halfX,
              halfY));
    }
    if (has(SceneFeature.RUBBER)) {
      clutter.add(
          beside(Clutter.Kind.RUBBER, LinearRgb.ofSrgb(226, 150, 158), shift, halfX, halfY));
    }
    if (has(SceneFeature.BEAKER)) {
      clutter.add(beside(Clutter.Kind.RIM, LinearRgb.ofSrgb(214, 224, 226), shift, halfX, halfY));
    }
    if (has(SceneFeature.CLIP)) {
      double u = dice.between(-0.3, 0.3) * width;
      clutter.add(
          new Clutter(
              Clutter.Kind.CLIP,
              placed(u, height / 2 + 3, 90 + dice.between(-12, 12), shift),
              LinearRgb.ofSrgb(150, 152, 156)));
    }
    if (has(SceneFeature.FINGER)) {
      Clutter.Kind kind = Clutter.Kind.FINGER;
      clutter.add(
          new Clutter(
              kind,
              placed(
                  dice.between(-0.3, 0.3) * width,
                  height / 2 + 35 - 5,
                  180 + dice.between(-15, 15),
                  shift),
              LinearRgb.ofSrgb(214, 158, 130)));
    }
    if (has(SceneFeature.CLIP_ON_FRONT)) {
      FrontCover cover = new FrontCover(strip);
      clutter.add(
          new Clutter(
              Clutter.Kind.HOLDING_CLIP,
              // The sheet's edge crosses it 3 mm from its middle, so it holds the sheet's 17 mm.
              placed(cover.acrossMm(), height / 2 - 3, 270 + dice.between(-4, 4), shift),
              LinearRgb.ofSrgb(150, 152, 156)));
    }
    if (has(SceneFeature.FINGER_ON_FRONT)) {
      FrontCover cover = new FrontCover(strip);
      double v = cover.alongMm() + 35 - dice.between(2, 3.5);
      clutter.add(
          new Clutter(
              Clutter.Kind.PRESSING_FINGER,
              placed(cover.acrossMm(), v, 180 + dice.between(-8, 8), shift),
              LinearRgb.ofSrgb(214, 158, 130)));
    }
    if (has(SceneFeature.HELD)) {
      double u = (dice.chance(0.5) ? 1 : -1) * width * 0.36;
      clutter.add(
          new Clutter(
              Clutter.Kind.FINGER,
              placed(u, -height / 2 + 12 - 35, dice.between(-10, 10), shift),
              LinearRgb.ofSrgb(198, 140, 112)));
    }
    return clutter;
  }

  /**
   * Looks for a place in the picture where the thing covers neither strip nor ruler; else at its
   * rim.
   */
  private Clutter beside(
      Clutter.Kind kind, LinearRgb colour, double[] shift, double halfX, double halfY) {
    double radius = kind == Clutter.Kind.PEN ? 40 : kind == Clutter.Kind.RIM ? 28 : 16;
    double angle = dice.between(0, 360);
    for (int tries = 0; tries < 200; tries++) {
      double x = dice.between(-1.05, 1.05) * halfX;
      double y = dice.between(-1.05, 1.05) * halfY;
      double turn = StrictMath.toRadians(turnDeg);
      double u = StrictMath.cos(turn) * (x - shift[0]) + StrictMath.sin(turn) * (y - shift[1]);
      double v = StrictMath.cos(turn) * (y - shift[1]) - StrictMath.sin(turn) * (x - shift[0]);
      boolean clear = Math.abs(u) > width / 2 + radius || Math.abs(v) > height / 2 + radius;
      double rulerMiddle = side * (width / 2 + gap + ruler.widthMm() / 2);
      boolean offRuler =
          (has(SceneFeature.RULER_ACROSS) || has(SceneFeature.NO_RULER))
              ? Math.abs(v) < height / 2
              : Math.abs(u - rulerMiddle) > ruler.widthMm() / 2 + radius;
      if (clear && offRuler) {
        return new Clutter(kind, new Placement(x, y, angle), colour);
      }
    }
    return new Clutter(kind, new Placement(-side * halfX, halfY, angle), colour);
  }
}
