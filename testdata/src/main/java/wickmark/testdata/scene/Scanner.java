package wickmark.testdata.scene;

import java.util.ArrayList;
import java.util.List;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.noise.ValueNoise;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.picture.Picture;

/** Makes drawn flatbed scans. */
public final class Scanner {
  private static final int LOOKS = 3;
  private static final double MM_PER_INCH = 25.4;

  private Scanner() {}

  /** Returns the scan of a plan; the same plan gives the same pixels on every machine. */
  public static DrawnPicture scan(ScanPlan plan) {
    double pxPerMm = plan.dpi() / MM_PER_INCH;
    int width = (int) Math.round(plan.glass().widthMm() * pxPerMm);
    int height = (int) Math.round(plan.glass().heightMm() * pxPerMm);
    Dice dice = new Dice(plan.seed());
    Camera camera = new Flatbed(pxPerMm);
    // A scanner's lamp stands on one side of its line of sight: thin shadows fall along the travel.
    double[] lamp = {0, StrictMath.cos(0.9), StrictMath.sin(0.9)};
    Composition scene = new Composition(camera, width, height, lamp, dice.seed());
    List<Layer> layers = new ArrayList<>(scene.rulers(plan.rulers()));
    layers.addAll(scene.strips(plan.strips()));
    layers.add(new TextureLayer(lid(plan, scene.box(), dice.seed()), camera));
    Canvas canvas =
        new Compositor(
                layers, new Illumination(LightPlan.even()), scene.shadows(layers, false), LOOKS)
            .compose(width, height);
    Picture picture = new Sensor(plan.sensor(), dice.seed()).expose(canvas);
    return new DrawnPicture(picture, scene.seen(), scene.ruler());
  }

  private static Texture lid(ScanPlan plan, double[] box, long seed) {
    ValueNoise noise = new ValueNoise(seed);
    Texture texture = new Texture(box[0], box[1], box[2], box[3], 2);
    LinearRgb colour = colour(plan.glass().lid());
    for (int row = 0; row < texture.rows; row++) {
      for (int column = 0; column < texture.columns; column++) {
        double shade = 1 + 0.012 * noise.octaves(texture.x(column) / 25, texture.y(row) / 25, 3);
        LinearRgb here = colour.times(shade);
        texture.set(column, row, here.red(), here.green(), here.blue(), 1);
      }
    }
    return texture;
  }

  private static LinearRgb colour(ScanPlan.Lid lid) {
    return switch (lid) {
      case BLACK -> LinearRgb.ofSrgb(36, 36, 38);
      case GREY -> LinearRgb.ofSrgb(140, 141, 143);
      default -> LinearRgb.ofSrgb(247, 247, 248);
    };
  }
}
