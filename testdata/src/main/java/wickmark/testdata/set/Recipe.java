package wickmark.testdata.set;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A kind of picture of a set.
 *
 * @param photo whether it is a photograph; else a scan
 * @param difficulty "easy", "medium" or "hard"
 * @param strip what the strip brings
 * @param scene what photograph or scan bring
 */
record Recipe(
    boolean photo,
    String difficulty,
    Set<StripFeature> strip,
    Set<SceneFeature> scene,
    PictureCase.Expectation expectation) {

  static Recipe photo(String difficulty, Enum<?>... features) {
    return new Recipe(
        true,
        difficulty,
        strip(features),
        scene(features),
        expectation(true, strip(features), scene(features)));
  }

  static Recipe scan(String difficulty, Enum<?>... features) {
    return new Recipe(
        false,
        difficulty,
        strip(features),
        scene(features),
        expectation(false, strip(features), scene(features)));
  }

  private static Set<StripFeature> strip(Enum<?>... features) {
    EnumSet<StripFeature> set = EnumSet.noneOf(StripFeature.class);
    Stream.of(features)
        .filter(StripFeature.class::isInstance)
        .map(StripFeature.class::cast)
        .forEach(set::add);
    return set;
  }

  private static Set<SceneFeature> scene(Enum<?>... features) {
    EnumSet<SceneFeature> set = EnumSet.noneOf(SceneFeature.class);
    Stream.of(features)
        .filter(SceneFeature.class::isInstance)
        .map(SceneFeature.class::cast)
        .forEach(set::add);
    return set;
  }

  /** What should come of a picture follows from what is in it. */
  private static PictureCase.Expectation expectation(
      boolean photo, Set<StripFeature> strip, Set<SceneFeature> scene) {
    if (scene.contains(SceneFeature.NO_STRIP)) {
      return PictureCase.Expectation.refuse("no-strip");
    } else if (strip.contains(StripFeature.BLANK)) {
      return PictureCase.Expectation.refuse("no-baseline");
    } else if (strip.contains(StripFeature.FRONT_OFF_TOP)) {
      return PictureCase.Expectation.refuse("no-front");
    }
    boolean none =
        photo ? scene.contains(SceneFeature.NO_RULER) : scene.contains(SceneFeature.NO_TAG);
    if (none) {
      return new PictureCase.Expectation("rf-only", "no-scale", List.of());
    } else if (photo) {
      return PictureCase.Expectation.ok("ruler");
    }
    return scene.contains(SceneFeature.RULER_IN_SCAN)
        ? PictureCase.Expectation.ok("ruler", "resolution")
        : PictureCase.Expectation.ok("resolution");
  }

  /** Returns the features as words. */
  List<String> tags() {
    return Stream.concat(strip.stream(), scene.stream())
        .map(feature -> feature.name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .collect(Collectors.toList());
  }
}
