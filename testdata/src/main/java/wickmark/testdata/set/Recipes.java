package wickmark.testdata.set;

import static wickmark.testdata.set.Recipe.photo;
import static wickmark.testdata.set.Recipe.scan;
import static wickmark.testdata.set.SceneFeature.*;
import static wickmark.testdata.set.StripFeature.*;

import java.util.List;

/** The kinds of pictures a set is drawn from: what teachers' photographs and scans bring. */
final class Recipes {
  static final List<Recipe> ALL =
      List.of(
          // Light
          photo("easy"),
          photo("easy", LAMINATE),
          photo("medium", HARD_SHADOW, WOOD),
          photo("medium", SOFT_SHADOW, WINDOW),
          photo("hard", HOT_SPOT, DARK),
          photo("medium", WINDOW, WHITE),
          photo("medium", WARM, WOOD),
          photo("medium", COOL, LAMINATE),
          photo("hard", MIXED, HARD_SHADOW, DARK, COIN),
          photo("hard", DIM, WOOD),
          // Desks and clutter
          photo("medium", WHITE, PEN),
          photo("medium", TILED, COIN, PEN),
          photo("hard", MAT, RUBBER),
          photo("hard", CLOTH, CLIP),
          photo("medium", WOOD, FINGER, BEAKER),
          photo("medium", DARK, COIN, CLIP),
          // Rulers
          photo("easy", STEEL_RULER, WOOD),
          photo("easy", WOODEN_RULER, LAMINATE, RULER_ACROSS),
          photo("medium", TRANSPARENT_RULER, DARK),
          photo("medium", COLOURED_RULER, RULER_ASKEW),
          photo("medium", INCH_RULER, RULER_TURNED_AWAY),
          photo("medium", PAPER_RULER, ON_RULER, WOOD),
          photo("medium", THICK_RULER, TILTED),
          photo("medium", RULER_OVER_EDGE, LAMINATE),
          photo("easy", NO_RULER, LAMINATE),
          photo("medium", NO_RULER, TILTED, WOOD),
          // Camera
          photo("hard", STEEP, WOOD),
          photo("medium", BARREL, TILTED, DARK),
          photo("medium", CUSHION, LAMINATE),
          photo("hard", DEFOCUSED, WOOD),
          photo("hard", MOVED, LAMINATE),
          photo("hard", NOISY, JPEG_60, TILTED),
          photo("medium", MESSENGER, WOOD),
          photo("easy", LARGE, LAMINATE),
          photo("medium", SMALL, LAMINATE),
          photo("medium", PANORAMA, SIDEWAYS, WOOD, RULER_ACROSS),
          photo("medium", SQUARE, LIVELY, TURNED),
          photo("medium", SIDEWAYS, EXIF_TURNED),
          photo("easy", UPSIDE_DOWN, LAMINATE),
          photo("medium", TURNED, TILTED, PNG),
          // Paper
          photo("medium", ARCHED, WOOD),
          photo("medium", CUPPED, DARK),
          photo("hard", BOWED, TILTED, WINDOW),
          photo("hard", COCKLED, WINDOW, DARK),
          photo("medium", LIFTED_CORNER, HAND_CUT, WOOD),
          photo("medium", HUNG, CREASED, HOLED, LAMINATE),
          photo("medium", STAINED, COFFEE_PAPER, DARK),
          photo("medium", CREAM_PAPER, TAPED, COCKLED),
          photo("medium", BLUISH_PAPER, KITCHEN_PAPER, HAND_CUT),
          photo("medium", PLATE, DARK, FAINT_BASELINE),
          photo("medium", REMARKS, RINGS, STROKES),
          photo("medium", ROUND_PAPER, RIBBON, WOOD),
          // Shapes
          photo("medium", WIDE_SHEET, LAMINATE),
          photo("medium", RIBBON, COLUMN, WOOD),
          photo("medium", RIBBON, NAMELESS, DARK, STEEL_RULER),
          photo("hard", RIBBON, HELD, WOOD),
          photo("hard", HELD, LAMINATE, HARD_SHADOW),
          photo("hard", UNUSED_STRIP, WOOD),
          photo("hard", UNUSED_STRIP, SIDEWAYS, LAMINATE, RULER_ACROSS),
          photo("medium", TICKED_FRONT, DARK),
          photo("hard", UNMARKED_FRONT, LAMINATE),
          // Chromatography
          photo("medium", TAILS, STREAKS, WOOD),
          photo("hard", BLEEDING, DRIFT, LAMINATE),
          photo("medium", TRIMMED, HAND_CUT, DARK),
          photo("medium", CRESCENTS, OVERLOADED, LAMINATE),
          photo("hard", TOUCHING, WOOD),
          photo("hard", SAME_HUE, LAMINATE),
          photo("hard", FAINT, SOFT_SHADOW, DARK),
          photo("medium", FRONT_RUNNER, STAYER, LAMINATE),
          photo("hard", DRIFT, SLANTED_FRONT, SLOPED_BASELINE, WOOD),
          photo("hard", CURVED_FRONT, COCKLED, DARK),
          photo("hard", INK_BASELINE, LAMINATE),
          photo("hard", WASHED_OUT, WOOD),
          photo("medium", DULL_DYES, RESIDUES, LAMINATE),
          // Scans
          scan("easy"),
          scan("easy", BLACK_LID),
          scan("medium", GREY_LID, COARSE, PNG),
          scan("medium", TIGHT),
          scan("medium", CROPPED),
          scan("medium", SIDEWAYS, BLACK_LID, STREAKS),
          scan("medium", UPSIDE_DOWN, TAILS),
          scan("medium", RULER_IN_SCAN, CRESCENTS),
          scan("medium", RIBBON, COLUMN),
          scan("hard", TOUCHING, SAME_HUE, BLACK_LID),
          scan("hard", UNMARKED_FRONT, SLOPED_BASELINE),
          scan("hard", FAINT, DULL_DYES, GREY_LID),
          scan("hard", INK_BASELINE, REMARKS, BLACK_LID),
          scan("medium", MANY, RIBBON, BLACK_LID),
          scan("medium", FINE, OVERLOADED),
          scan("medium", WIDE_SHEET, COFFEE_PAPER, JPEG_60),
          scan("easy", NO_TAG),
          // To be refused
          photo("easy", NO_STRIP, WOOD, PEN),
          photo("easy", NO_STRIP, LAMINATE, COIN),
          photo("easy", FRONT_OFF_TOP, LAMINATE),
          scan("easy", FRONT_OFF_TOP, BLACK_LID),
          photo("easy", BLANK, DARK),
          scan("easy", BLANK, BLACK_LID),
          // On exercise paper
          photo("medium", SQUARED_PAPER, HARD_SHADOW),
          photo("medium", RULED_PAPER, CREAM_PAPER, SOFT_SHADOW),
          // Writing and the solvent's traces at the front
          photo("medium", NAMES_AT_FRONT, WOOD),
          photo("medium", NAMES_AT_BOTH_ENDS, LAMINATE),
          photo("medium", LONG_TICKS, WOOD),
          photo("medium", TIDE_ABOVE_FRONT, DARK),
          photo("medium", TIDE_BELOW_FRONT, LAMINATE),
          // A ruler on or below the sheet's side, and no ruler but a tape
          photo("hard", WHITE_RULER, RULER_OVER_EDGE, WOOD),
          photo("hard", WHITE_RULER, RULER_UNDER_EDGE, DARK),
          photo("medium", TAPE_MEASURE, WOOD),
          // Light through blinds and leaves, and too much of it
          photo("hard", BLINDS_ACROSS, WOOD),
          photo("hard", BLINDS_ALONG, LAMINATE),
          photo("hard", DAPPLED, WOOD),
          photo("hard", BURNT_CORNER, DARK),
          photo("hard", BRIGHTENED, LAMINATE),
          // Things over the front
          photo("hard", CLIP_ON_FRONT, HIGH_FRONT, DARK),
          photo("hard", FINGER_ON_FRONT, WOOD),
          // Sheets that are no rectangles
          photo("medium", TRAPEZOID, DARK),
          photo("medium", RIBBON, POINTED_END, WOOD),
          photo("medium", ROUND_END, LAMINATE));

  private Recipes() {}
}
