package wickmark.testdata.set;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.strip.StripPlan;
import wickmark.testdata.truth.SeenStrip;

/**
 * Draws a set of pictures with their truths into a folder: {@code DrawSet --out DIR [--count N]
 * [--seed S] [--only TAG]}.
 *
 * <p>A list of them in manifest.csv; picture NAME.jpg or NAME.png; truth NAME.truth.json, or
 * NAME-1.truth.json and so on from the left where a picture holds several strips. The same count
 * and seed give the same pixels.
 */
public final class DrawSet {
  private static final int STRIPS_OF_MANY = 6;

  private final Path folder;
  private final long seed;

  DrawSet(Path folder, long seed) {
    this.folder = folder;
    this.seed = seed;
  }

  /** Returns how many kinds of pictures there are; a smaller count draws only the first ones. */
  public static int kinds() {
    return Recipes.ALL.size();
  }

  public static void main(String[] arguments) throws IOException {
    DrawSetOptions options = DrawSetOptions.of(List.of(arguments));
    Files.createDirectories(options.out());
    DrawSet set = new DrawSet(options.out(), options.seed());
    StringBuilder list = new StringBuilder("name,file,mode,difficulty,expected,reason,tags\n");
    for (int i = 0; i < options.count(); i++) {
      Recipe recipe = Recipes.ALL.get(i % Recipes.ALL.size());
      if (options.only().isEmpty() || recipe.tags().contains(options.only())) {
        set.draw(i, recipe).forEach(picture -> list.append(row(picture)));
      }
    }
    Files.write(
        options.out().resolve("manifest.csv"), list.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static String row(PictureCase picture) {
    return String.join(
            ",",
            picture.name(),
            picture.file(),
            picture.mode(),
            picture.difficulty(),
            picture.expectation().outcome(),
            picture.expectation().reason(),
            String.join(" ", picture.tags()))
        + "\n";
  }

  /**
   * Draws one picture of the set, writes it with its truth, and returns its case, or those of its
   * strips.
   */
  List<PictureCase> draw(int index, Recipe recipe) throws IOException {
    String name = String.format(Locale.ROOT, "drawn-%03d", index + 1);
    Dice dice = new Dice(seed * 1_000_003 + index);
    Shot shot = shot(recipe, dice);
    String file = name + shot.suffix();
    Files.write(folder.resolve(file), shot.file());
    List<SeenStrip> strips = shot.drawn().strips();
    boolean single = strips.size() < 2;
    List<PictureCase> cases = new ArrayList<>();
    for (int i = 0; i < Math.max(1, strips.size()); i++) {
      String called = single ? name : name + "-" + (i + 1);
      PictureCase picture =
          new PictureCase(
              called,
              file,
              recipe.photo() ? "phone" : "scan",
              recipe.difficulty(),
              recipe.tags(),
              recipe.expectation());
      String truth =
          strips.isEmpty()
              ? TruthJson.of(picture, shot.scene())
              : TruthJson.of(
                  picture, strips.get(i), shot.drawn().ruler(), shot.tags(), scene(shot));
      Files.write(folder.resolve(called + ".truth.json"), truth.getBytes(StandardCharsets.UTF_8));
      cases.add(picture);
    }
    return cases;
  }

  private static Map<String, Object> scene(Shot shot) {
    Map<String, Object> scene = new LinkedHashMap<>(shot.scene());
    scene.put("width_px", shot.drawn().picture().widthPx());
    scene.put("height_px", shot.drawn().picture().heightPx());
    return scene;
  }

  private static Shot shot(Recipe recipe, Dice dice) {
    long stripSeed = dice.seed();
    StripPlan strip = new StripMaker(recipe.strip(), stripSeed).plan();
    if (recipe.photo()) {
      return new PhotoMaker(strip, recipe.scene(), dice.seed()).shot();
    }
    List<StripPlan> strips = new ArrayList<>(List.of(strip));
    if (recipe.scene().contains(SceneFeature.MANY)) {
      Set<StripFeature> features =
          recipe.strip().isEmpty()
              ? EnumSet.noneOf(StripFeature.class)
              : EnumSet.copyOf(recipe.strip());
      while (strips.size() < STRIPS_OF_MANY) {
        StripPlan next = new StripMaker(features, dice.seed()).plan();
        // One list of lane names is given for the whole picture, so every strip has the same lanes.
        if (named(next).equals(named(strip))) {
          strips.add(next);
        }
      }
    }
    return new ScanMaker(strips, recipe.scene(), dice.seed()).shot();
  }

  private static List<String> named(StripPlan strip) {
    return strip.lanes().stream().map(lane -> lane.name() + " " + lane.role().word()).toList();
  }
}
