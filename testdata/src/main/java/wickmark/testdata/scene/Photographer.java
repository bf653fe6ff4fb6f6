package wickmark.testdata.scene;

import java.util.ArrayList;
import java.util.List;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.picture.Picture;

/** Takes drawn photographs. */
public final class Photographer {
  private static final int LOOKS = 2;

  /** The most grid points of a desk's texture: beyond, it is painted more coarsely. */
  private static final double LARGEST_DESK = 6e6;

  private Photographer() {}

  /** Returns the photograph of a plan; the same plan gives the same pixels on every machine. */
  public static DrawnPicture take(PhotoPlan plan) {
    Dice dice = new Dice(plan.seed());
    Camera camera = new Pinhole(plan.camera());
    int width = plan.camera().widthPx();
    int height = plan.camera().heightPx();
    Composition scene = new Composition(camera, width, height, plan.light().towards(), dice.seed());
    List<Layer> layers = new ArrayList<>(scene.clutter(plan.things().clutter()));
    List<Layer> rulers = scene.rulers(plan.things().rulers());
    List<Layer> strips = scene.strips(plan.things().strips());
    layers.addAll(plan.things().rulersBelow() ? strips : rulers);
    layers.addAll(plan.things().rulersBelow() ? rulers : strips);
    layers.addAll(scene.prints(plan.things().prints()));
    double[] box = scene.box();
    double area = (box[2] - box[0]) * (box[3] - box[1]);
    double fineness = Math.min(scene.fineness(1, 2, 16), Math.sqrt(LARGEST_DESK / area));
    layers.add(
        new TextureLayer(DeskPainter.paint(plan.desk(), box, fineness, dice.seed()), camera));
    Canvas canvas =
        new Compositor(
                layers,
                new Illumination(plan.light()),
                scene.shadows(layers, plan.things().shadesThings()),
                LOOKS)
            .compose(width, height);
    Picture picture = new Sensor(plan.sensor(), dice.seed()).expose(canvas);
    return new DrawnPicture(picture, scene.seen(), scene.ruler());
  }
}
