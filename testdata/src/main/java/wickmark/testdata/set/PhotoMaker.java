package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.picture.PictureTags;
import wickmark.testdata.scene.CameraPlan;
import wickmark.testdata.scene.Desk;
import wickmark.testdata.scene.LightPlan;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Photographer;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.SensorPlan;
import wickmark.testdata.strip.StripPlan;

/** Makes a photograph of a set by chance, with the features that are asked for. */
final class PhotoMaker {
  /** Where no desk is asked for: exercise paper only lies there when it is. */
  private static final List<Desk> USUAL_DESKS =
      List.of(
          Desk.PINE,
          Desk.OAK,
          Desk.DARK_WOOD,
          Desk.GREY_LAMINATE,
          Desk.SAND_LAMINATE,
          Desk.WHITE_BENCH,
          Desk.DARK_BENCH,
          Desk.TILES,
          Desk.GREEN_MAT,
          Desk.CLOTH);

  private final Set<SceneFeature> features;
  private final Dice dice;
  private final StripPlan strip;

  PhotoMaker(StripPlan strip, Set<SceneFeature> features, long seed) {
    this.strip = strip;
    this.features = features;
    this.dice = new Dice(seed);
  }

  Shot shot() {
    int[] size = size();
    ThingsMaker things = new ThingsMaker(strip, features, dice.seed());
    CameraPlan camera = camera(size, things);
    Desk desk = desk();
    PhotoPlan.Things lying = things.things(camera);
    LightPlan light = new LightMaker(features, new Dice(dice.seed())).light();
    if (WindowMaker.isAskedFor(features)) {
      Placement placement = lying.strips().get(0).placement();
      light =
          new WindowMaker(features, strip.sheet(), placement, new Dice(dice.seed())).over(light);
    }
    PhotoPlan plan = new PhotoPlan(camera, desk, light, sensor(), lying, dice.seed());
    Map<String, Object> scene =
        TruthJson.ordered(
            "desk",
            desk.word(),
            "camera",
            TruthJson.ordered(
                "tilt_deg",
                camera.pose().tiltDeg(),
                "distance_mm",
                camera.distanceMm(),
                "focal_px",
                camera.focalPx(),
                "k1",
                camera.k1(),
                "defocus_px",
                plan.sensor().defocusPx(),
                "motion_px",
                plan.sensor().motion().lengthPx()),
            "bends",
            plan.things().strips().isEmpty()
                ? List.of()
                : plan.things().strips().get(0).bends().stream()
                    .map(b -> b.kind() + " " + Math.round(b.heightMm() * 10) / 10.0 + " mm")
                    .toList());
    return new Shot(Photographer.take(plan), tags(camera), quality(), scene);
  }

  private boolean has(SceneFeature feature) {
    return features.contains(feature);
  }

  private int[] size() {
    int[] size =
        dice.pick(
            List.of(
                new int[] {1536, 2048},
                new int[] {1536, 2048},
                new int[] {1944, 2592},
                new int[] {1224, 1632}));
    if (has(SceneFeature.SMALL) || has(SceneFeature.MESSENGER)) {
      size = new int[] {960, 1280};
    } else if (has(SceneFeature.LARGE)) {
      size = new int[] {3024, 4032};
    } else if (has(SceneFeature.PANORAMA)) {
      return new int[] {3600, 1350};
    } else if (has(SceneFeature.SQUARE)) {
      return new int[] {1800, 1800};
    }
    // A ribbon is photographed along its length; a sheet now and then the other way.
    boolean slender = strip.sheet().heightMm() > 2.5 * strip.sheet().widthMm();
    boolean landscape =
        has(SceneFeature.SIDEWAYS) != dice.chance(slender || has(SceneFeature.HELD) ? 0 : 0.25);
    return landscape ? new int[] {size[1], size[0]} : size;
  }

  private CameraPlan camera(int[] size, ThingsMaker things) {
    double tilt =
        has(SceneFeature.STEEP)
            ? dice.between(23, 29)
            : has(SceneFeature.TILTED) ? dice.between(13, 20) : dice.between(0.5, 7);
    double focal = CameraPlan.focalPx(focalLength35mm(), size[0], size[1]);
    double[] extent = things.extent();
    double room =
        has(SceneFeature.HELD) ? 1.12 : 1.1 + 1.1 * StrictMath.sin(StrictMath.toRadians(tilt));
    double fit = Math.min(size[0] / (room * extent[0]), size[1] / (room * extent[1]));
    double pxPerMm = fit * dice.between(0.8, 1);
    double k1 =
        has(SceneFeature.BARREL)
            ? -dice.between(0.03, 0.06)
            : has(SceneFeature.CUSHION) ? dice.between(0.02, 0.04) : dice.between(-0.006, 0.006);
    CameraPlan.Pose pose = new CameraPlan.Pose(tilt, dice.between(0, 360), dice.between(-2, 2));
    return new CameraPlan(size[0], size[1], focal, focal / pxPerMm, pose, k1);
  }

  /** Main cameras of phones, the same zoomed twice, and pictures that were cut (35 mm, our own). */
  private double focalLength35mm() {
    double share = dice.between(0, 1);
    if (share < 0.7) {
      return 24 + share / 0.7 * 5;
    }
    return share < 0.85 ? 48 + (share - 0.7) / 0.15 * 6 : 30 + (share - 0.85) / 0.15 * 15;
  }

  private Desk desk() {
    if (has(SceneFeature.WOOD)) {
      return dice.pick(List.of(Desk.PINE, Desk.OAK, Desk.DARK_WOOD));
    } else if (has(SceneFeature.DARK)) {
      return Desk.DARK_BENCH;
    } else if (has(SceneFeature.WHITE)) {
      return Desk.WHITE_BENCH;
    } else if (has(SceneFeature.TILED)) {
      return Desk.TILES;
    } else if (has(SceneFeature.MAT)) {
      return Desk.GREEN_MAT;
    } else if (has(SceneFeature.CLOTH)) {
      return Desk.CLOTH;
    } else if (has(SceneFeature.SQUARED_PAPER)) {
      return Desk.SQUARED_PAPER;
    } else if (has(SceneFeature.RULED_PAPER)) {
      return Desk.RULED_PAPER;
    } else if (has(SceneFeature.LAMINATE)) {
      return dice.pick(List.of(Desk.GREY_LAMINATE, Desk.SAND_LAMINATE));
    }
    return dice.pick(USUAL_DESKS);
  }

  private SensorPlan sensor() {
    double defocus = has(SceneFeature.DEFOCUSED) ? dice.between(1.6, 2.4) : dice.between(0.4, 0.9);
    double motion = has(SceneFeature.MOVED) ? dice.between(3, 5) : 0;
    double noise =
        has(SceneFeature.NOISY) || has(SceneFeature.DIM)
            ? dice.between(0.016, 0.026)
            : dice.between(0.003, 0.009);
    double exposure = exposure();
    double contrast = has(SceneFeature.LIVELY) ? dice.between(0.2, 0.35) : 0;
    return new SensorPlan(
        defocus,
        new SensorPlan.Motion(motion, dice.between(0, 180)),
        noise,
        exposure,
        dice.between(0.03, 0.14),
        new SensorPlan.Finish(dice.between(0, 0.45), contrast));
  }

  private double exposure() {
    if (has(SceneFeature.DIM)) {
      return dice.between(0.4, 0.5);
    } else if (has(SceneFeature.BRIGHTENED)) {
      return dice.between(1.12, 1.2);
    } else if (has(SceneFeature.BURNT_CORNER)) {
      return dice.between(0.94, 1.0);
    }
    return dice.between(0.8, 0.98);
  }

  private int quality() {
    if (has(SceneFeature.PNG)) {
      return 0;
    }
    return has(SceneFeature.JPEG_60) || has(SceneFeature.MESSENGER) ? 60 : 84 + dice.below(12);
  }

  private PictureTags tags(CameraPlan camera) {
    List<Integer> turns = new ArrayList<>(List.of(1, 1, 1, 6, 3, 8));
    int orientation =
        has(SceneFeature.EXIF_TURNED) ? dice.pick(List.of(2, 3, 4, 5, 6, 7, 8)) : dice.pick(turns);
    boolean plain = has(SceneFeature.PNG) || has(SceneFeature.MESSENGER);
    boolean tellsLens = !plain && dice.chance(0.75);
    // Phones write 72 dpi, which means nothing: a picture that says so has still no scale.
    Optional<Double> dpi = !plain && dice.chance(0.5) ? Optional.of(72.0) : Optional.empty();
    return new PictureTags(
        plain ? 1 : orientation,
        dpi,
        tellsLens ? OptionalDouble.of(camera.focalLength35mm()) : OptionalDouble.empty());
  }
}
