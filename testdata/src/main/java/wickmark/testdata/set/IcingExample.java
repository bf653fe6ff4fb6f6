package wickmark.testdata.set;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import wickmark.testdata.colour.ColourTemperature;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.picture.PictureFile;
import wickmark.testdata.picture.PictureTags;
import wickmark.testdata.scene.Bend;
import wickmark.testdata.scene.CameraPlan;
import wickmark.testdata.scene.Clutter;
import wickmark.testdata.scene.Desk;
import wickmark.testdata.scene.LightPlan;
import wickmark.testdata.scene.PhotoPlan;
import wickmark.testdata.scene.Photographer;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.RulerItem;
import wickmark.testdata.scene.RulerPlan;
import wickmark.testdata.scene.ScanPlan;
import wickmark.testdata.scene.Scanner;
import wickmark.testdata.scene.SensorPlan;
import wickmark.testdata.scene.StripItem;

/**
 * Draws the example: a bakery's icing and the four colourings of its cupboard, run side by side.
 * All of it is invented. Usage: {@code IcingExample DIR}.
 */
public final class IcingExample {
  private static final double SCAN_DPI = 200;

  private final Path folder;

  private IcingExample(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] arguments) throws IOException {
    IcingExample example = new IcingExample(Path.of(arguments[0]));
    Files.createDirectories(example.folder);
    example.scan();
    example.onTheBench();
    example.byTheWindow();
  }

  static DrawnPicture firstScan() {
    return Scanner.scan(ScanPlan.of(IcingStrip.firstRun(), SCAN_DPI, 9).seeded(11));
  }

  /** The first strip on a scanner, with its resolution in the file. */
  private void scan() throws IOException {
    DrawnPicture drawn = firstScan();
    write(
        "icing-scan",
        "scan",
        "easy",
        drawn,
        PictureTags.dpi(SCAN_DPI),
        PictureCase.Expectation.ok("resolution"),
        90);
    Files.write(
        folder.resolve("hand-readings.csv"),
        IcingClass.readings(drawn.strip().strip()).getBytes(StandardCharsets.UTF_8));
  }

  /** The same strip on a wooden bench beside a plastic ruler. */
  private void onTheBench() throws IOException {
    CameraPlan camera = CameraPlan.above(1200, 1600, 8.6).tilted(6, 262, 1);
    PhotoPlan plan =
        PhotoPlan.of(
                camera,
                StripItem.of(IcingStrip.firstRun(), new Placement(-16, 1, 2))
                    .bent(new Bend(Bend.Kind.ARCH, 1.2, 3)))
            .with(new RulerItem(RulerPlan.school(), new Placement(50, 12, 91)))
            .onto(Desk.PINE)
            .lit(LightPlan.even().withSlope(0.5, 0.3).withColour(ColourTemperature.cast(4800, 0.2)))
            .with(SensorPlan.good())
            .seeded(21);
    write(
        "icing-bench",
        "phone",
        "easy",
        Photographer.take(plan),
        lens(camera),
        PictureCase.Expectation.ok("ruler"),
        86);
  }

  /** A second run of the same samples, on tiles by a window, beside a steel ruler. */
  private void byTheWindow() throws IOException {
    CameraPlan camera = CameraPlan.above(1600, 1200, 8.2).tilted(11, 215, -2).withDistortion(-0.01);
    RulerPlan steel =
        new RulerPlan(
            RulerPlan.Material.STEEL,
            200,
            28,
            0.7,
            RulerPlan.Graduation.MILLIMETRES,
            RulerPlan.Graduation.INCHES);
    PhotoPlan plan =
        PhotoPlan.of(
                camera,
                StripItem.of(IcingStrip.secondRun(), new Placement(0, 16, 87))
                    .bent(new Bend(Bend.Kind.COCKLE, 0.7, 5)))
            .with(new RulerItem(steel, new Placement(10, -47, -2)))
            .with(
                new Clutter(
                    Clutter.Kind.PEN, new Placement(97, 58, 74), LinearRgb.ofSrgb(40, 66, 140)))
            .onto(Desk.TILES)
            .lit(
                LightPlan.even()
                    .withSlope(-1.4, 0.8)
                    .withColour(ColourTemperature.cast(7000, 0.25)))
            .with(SensorPlan.good().withExposure(0.84))
            .seeded(31);
    write(
        "icing-window",
        "phone",
        "medium",
        Photographer.take(plan),
        lens(camera),
        PictureCase.Expectation.ok("ruler"),
        86);
  }

  private static PictureTags lens(CameraPlan camera) {
    return new PictureTags(1, Optional.empty(), OptionalDouble.of(camera.focalLength35mm()));
  }

  private void write(
      String name,
      String mode,
      String difficulty,
      DrawnPicture drawn,
      PictureTags tags,
      PictureCase.Expectation expected,
      int quality)
      throws IOException {
    PictureCase picture =
        new PictureCase(name, name + ".jpg", mode, difficulty, List.of("example"), expected);
    Map<String, Object> size =
        TruthJson.ordered(
            "width_px", drawn.picture().widthPx(), "height_px", drawn.picture().heightPx());
    Files.write(folder.resolve(picture.file()), PictureFile.jpeg(drawn.picture(), quality, tags));
    String truth = TruthJson.of(picture, drawn.strip(), drawn.ruler(), tags, size);
    Files.write(folder.resolve(name + ".truth.json"), truth.getBytes(StandardCharsets.UTF_8));
  }
}
