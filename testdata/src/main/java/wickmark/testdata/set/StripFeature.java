package wickmark.testdata.set;

/**
 * What a strip of a set may bring. Without any, it is a sheet of three to five lanes, well made.
 */
enum StripFeature {
  // The sheet
  WIDE_SHEET,
  RIBBON,
  COFFEE_PAPER,
  CREAM_PAPER,
  BLUISH_PAPER,
  KITCHEN_PAPER,
  PLATE,
  HAND_CUT,
  ROUND_PAPER,
  TRAPEZOID,
  POINTED_END,
  ROUND_END,
  // What was written
  SLOPED_BASELINE,
  FAINT_BASELINE,
  INK_BASELINE,
  TICKED_FRONT,
  LONG_TICKS,
  UNMARKED_FRONT,
  RINGS,
  STROKES,
  REMARKS,
  NAMELESS,
  NAMES_AT_FRONT,
  NAMES_AT_BOTH_ENDS,
  // What the solvent did
  SLANTED_FRONT,
  CURVED_FRONT,
  FRONT_OFF_TOP,
  HIGH_FRONT,
  TIDE_ABOVE_FRONT,
  TIDE_BELOW_FRONT,
  WASHED_OUT,
  DRIFT,
  // What happened to it
  STAINED,
  HOLED,
  CREASED,
  TAPED,
  TRIMMED,
  // The dyes
  COLUMN,
  BLEEDING,
  TAILS,
  CRESCENTS,
  OVERLOADED,
  TOUCHING,
  SAME_HUE,
  FAINT,
  FRONT_RUNNER,
  STAYER,
  STREAKS,
  RESIDUES,
  DULL_DYES,
  // Nothing was ever put on it
  BLANK
}
