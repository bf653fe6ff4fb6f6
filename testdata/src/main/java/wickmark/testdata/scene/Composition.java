package wickmark.testdata.scene;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.strip.PaintedStrip;
import wickmark.testdata.strip.StripPainter;
import wickmark.testdata.truth.PointMm;
import wickmark.testdata.truth.PointPx;
import wickmark.testdata.truth.RulerTruth;
import wickmark.testdata.truth.SeenStrip;

/** Gathers what is to be seen under one camera: layers, shadows and the truth of each thing. */
final class Composition {
  private final Camera camera;
  private final int widthPx;
  private final int heightPx;
  private final double pxPerMm;
  private final double[] light;
  private final Dice dice;
  private final List<Shadows.Caster> casters = new ArrayList<>();
  private final Map<Layer, Shadows.Caster> casterOf = new HashMap<>();
  private final List<SeenStrip> seen = new ArrayList<>();
  private final List<RulerTruth> rulers = new ArrayList<>();

  Composition(Camera camera, int widthPx, int heightPx, double[] light, long seed) {
    this.camera = camera;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.light = light;
    this.dice = new Dice(seed);
    double[] a = new double[2];
    double[] b = new double[2];
    camera.placeAt(widthPx / 2.0 - 4, heightPx / 2.0, 0, a);
    camera.placeAt(widthPx / 2.0 + 4, heightPx / 2.0, 0, b);
    this.pxPerMm = 8 / StrictMath.hypot(b[0] - a[0], b[1] - a[1]);
  }

  /** Returns how many pixels a millimetre takes in the middle of the picture. */
  double pxPerMm() {
    return pxPerMm;
  }

  List<Layer> strips(List<StripItem> items) {
    List<Layer> layers = new ArrayList<>();
    for (StripItem item : items) {
      PaintedStrip strip = StripPainter.paint(item.plan(), fineness(1.3, 8, 24));
      double width = item.plan().sheet().widthMm();
      double height = item.plan().sheet().heightMm();
      Frame frame = new Frame(item.placement());
      SheetSurface surface = new SheetSurface(width, height, item.bends());
      StripLayer layer = new StripLayer(strip, surface, item.placement(), camera, light);
      layers.add(layer);
      cast(layer, new StripCaster(surface, item.placement(), item.plan().sheet().cut().figure()));
      if (item.developed()) {
        seen.add(
            new SeenStrip(
                strip.truth(), place -> project(surface, frame, place), widthPx, heightPx));
      }
    }
    return layers;
  }

  private PointPx project(SheetSurface surface, Frame frame, PointMm place) {
    double[] xyz = new double[3];
    surface.at(place.x(), place.y(), xyz);
    double[] world = frame.toWorld(xyz[0], xyz[1]);
    return camera.project(world[0], world[1], xyz[2]);
  }

  List<Layer> rulers(List<RulerItem> items) {
    List<Layer> layers = new ArrayList<>();
    for (RulerItem item : items) {
      Texture texture = RulerPainter.paint(item.plan(), fineness(1.4, 10, 24), dice.seed());
      RulerLayer layer = new RulerLayer(item.plan(), item.placement(), camera, texture);
      layers.add(layer);
      cast(layer, layer);
      rulers.add(layer.truth());
    }
    return layers;
  }

  List<Layer> clutter(List<Clutter> items) {
    List<Layer> layers = new ArrayList<>();
    for (Clutter item : items) {
      Texture texture = ClutterPainter.paint(item, fineness(1, 5, 16), dice.seed());
      ClutterLayer layer = new ClutterLayer(item, camera, texture);
      layers.add(layer);
      cast(layer, layer);
    }
    return layers;
  }

  List<Layer> prints(List<PrintItem> items) {
    List<Layer> layers = new ArrayList<>();
    for (PrintItem item : items) {
      PrintLayer layer = new PrintLayer(item, camera, light);
      layers.add(layer);
      cast(layer, layer);
    }
    return layers;
  }

  /** Returns the world's box that is seen: least x, least y, largest x, largest y. */
  double[] box() {
    double[] box = {1e9, 1e9, -1e9, -1e9};
    double[] xy = new double[2];
    for (int i = 0; i <= 8; i++) {
      for (int j = 0; j <= 8; j++) {
        camera.placeAt(widthPx * i / 8.0, heightPx * j / 8.0, 0, xy);
        box[0] = Math.min(box[0], xy[0] - 3);
        box[1] = Math.min(box[1], xy[1] - 3);
        box[2] = Math.max(box[2], xy[0] + 3);
        box[3] = Math.max(box[3], xy[1] + 3);
      }
    }
    return box;
  }

  private void cast(Layer layer, Shadows.Caster caster) {
    casters.add(caster);
    casterOf.put(layer, caster);
  }

  /**
   * Returns the shadows on each layer.
   *
   * @param layers from the uppermost to the desk, which is no caster
   * @param onEachOther whether things shade what they lie on; else only the desk
   */
  List<Shadows> shadows(List<Layer> layers, boolean onEachOther) {
    List<Shadows> shadows = new ArrayList<>();
    List<Shadows.Caster> above = new ArrayList<>();
    for (Layer layer : layers) {
      Shadows.Caster own = casterOf.get(layer);
      if (own == null) {
        shadows.add(new Shadows(casters, light));
      } else {
        shadows.add(Shadows.on(own, onEachOther ? above : List.of(), light));
        above.add(own);
      }
    }
    return shadows;
  }

  List<SeenStrip> seen() {
    return seen;
  }

  Optional<RulerTruth> ruler() {
    return rulers.stream().findFirst();
  }

  double fineness(double factor, double least, double most) {
    return Math.max(least, Math.min(most, factor * pxPerMm));
  }
}
