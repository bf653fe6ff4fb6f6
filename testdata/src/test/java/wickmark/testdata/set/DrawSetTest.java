package wickmark.testdata.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickmark.testdata.picture.Picture;
import wickmark.testdata.picture.PictureFile;

class DrawSetTest {
  @TempDir Path folder;

  private static List<String> names(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().collect(Collectors.toList());
    }
  }

  @Test
  void holdsSixtyKindsOfPicturesAtLeast() {
    assertThat(DrawSet.kinds()).isGreaterThanOrEqualTo(60);
  }

  @Test
  void everyFeatureIsAskedForBySomeRecipe() {
    List<String> asked =
        Recipes.ALL.stream().flatMap(recipe -> recipe.tags().stream()).distinct().toList();

    assertThat(asked).hasSize(StripFeature.values().length + SceneFeature.values().length);
  }

  @Test
  void drawsAPhotographWithItsTruth() throws IOException {
    new DrawSet(folder, 3).draw(0, Recipe.photo("easy", SceneFeature.SMALL, SceneFeature.LAMINATE));

    assertThat(names(folder)).containsExactly("drawn-001.jpg", "drawn-001.truth.json");
    assertThat(Files.readString(folder.resolve("drawn-001.truth.json")))
        .startsWith(
            "{\"format\":\"wickmark-truth/1\",\"name\":\"drawn-001\",\"file\":\"drawn-001.jpg\",\"expected\":\"ok\"")
        .contains("\"mm_per_px\":{\"centre\":0.")
        .contains("\"scale_sources\":[\"ruler\"]")
        .doesNotContain("NaN");
  }

  @Test
  void drawsTheSamePixelsForTheSameSeed() throws IOException {
    Recipe recipe = Recipe.scan("easy", SceneFeature.COARSE, SceneFeature.PNG);
    new DrawSet(folder, 3).draw(0, recipe);
    new DrawSet(folder, 3).draw(0, recipe);
    Picture first = PictureFile.decoded(Files.readAllBytes(folder.resolve("drawn-001.png")));
    Path other = Files.createDirectory(folder.resolve("again"));
    new DrawSet(other, 3).draw(0, recipe);
    Picture second = PictureFile.decoded(Files.readAllBytes(other.resolve("drawn-001.png")));

    assertThat(second.rgb()).isEqualTo(first.rgb());
  }

  /**
   * What was measured on drawn pictures is only worth something as long as they can be drawn again:
   * these sums are from before there were kinds that these features know nothing of.
   */
  @Test
  void whatIsDrawnForASeedStaysAsItWas() throws IOException {
    Recipe photo =
        Recipe.photo(
            "easy",
            SceneFeature.SMALL,
            SceneFeature.PNG,
            SceneFeature.RULER_OVER_EDGE,
            SceneFeature.CLIP,
            SceneFeature.FINGER);
    Recipe scan =
        Recipe.scan(
            "medium",
            SceneFeature.COARSE,
            SceneFeature.PNG,
            StripFeature.TICKED_FRONT,
            StripFeature.HAND_CUT);

    assertThat(sum(photo, 2)).isEqualTo(0x2442c56cL);
    assertThat(sum(scan, 7)).isEqualTo(0x846334eL);
  }

  private long sum(Recipe recipe, int index) throws IOException {
    PictureCase drawn = new DrawSet(folder, 3).draw(index, recipe).get(0);
    CRC32 sum = new CRC32();
    sum.update(PictureFile.decoded(Files.readAllBytes(folder.resolve(drawn.file()))).rgb());
    return sum.getValue();
  }

  @Test
  void aFrontThatRanOffTheTopHasNoRf() throws IOException {
    new DrawSet(folder, 3)
        .draw(4, Recipe.scan("easy", SceneFeature.COARSE, StripFeature.FRONT_OFF_TOP));

    assertThat(Files.readString(folder.resolve("drawn-005.truth.json")))
        .contains("\"expected\":\"refuse\",\"reason\":\"no-front\"")
        .contains("\"front\":{\"present\":false")
        .contains("\"rf\":null");
  }

  @Test
  void aScanOfSeveralStripsHasATruthForEach() throws IOException {
    new DrawSet(folder, 3)
        .draw(
            0, Recipe.scan("medium", SceneFeature.COARSE, SceneFeature.MANY, StripFeature.RIBBON));

    assertThat(names(folder))
        .contains("drawn-001.jpg", "drawn-001-1.truth.json", "drawn-001-6.truth.json");
  }

  @Test
  void refusesAnOptionItDoesNotKnow() {
    assertThatThrownBy(() -> DrawSetOptions.of(List.of("--colour", "red")))
        .hasMessageContaining("--colour");
  }
}
