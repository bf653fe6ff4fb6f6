package wickmark.core.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import wickmark.core.chromatogram.LaneRole;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.DyeAbsorbance;
import wickmark.core.rf.RetardationFactor;

/** Lanes of invented dyes for tests. */
final class Lanes {
  static final DyeAbsorbance RED = new DyeAbsorbance(0.04, 1, 0.88);
  static final DyeAbsorbance YELLOW = new DyeAbsorbance(0.01, 0.07, 1);
  static final DyeAbsorbance ORANGE = new DyeAbsorbance(0.02, 0.42, 1);
  static final DyeAbsorbance BLUE = new DyeAbsorbance(1, 0.58, 0.1);
  static final DyeAbsorbance GREEN = new DyeAbsorbance(1, 0.21, 0.72);

  private Lanes() {}

  static LaneSignature reference(String name, Dye... dyes) {
    return lane(name, LaneRole.REFERENCE, dyes);
  }

  static LaneSignature unknown(Dye... dyes) {
    return lane("X", LaneRole.UNKNOWN, dyes);
  }

  private static LaneSignature lane(String name, LaneRole role, Dye... dyes) {
    List<Dye> fromTheFront = new ArrayList<>(Arrays.asList(dyes));
    fromTheFront.sort(Comparator.comparingDouble(Dye::rf).reversed());
    List<SpotSignature> spots = new ArrayList<>();
    for (Dye dye : fromTheFront) {
      spots.add(
          new SpotSignature(
              spots.size() + 1,
              new RetardationFactor(dye.rf(), 0.003),
              dye.absorbance().atStrength(dye.depth()).toLab(),
              dye.depth(),
              dye.halfHeight(),
              dye.flags(),
              dye.confidence()));
    }
    return new LaneSignature(name, role, spots);
  }

  /** What is read of the only unknown among these lanes. */
  static UnknownReading read(LaneSignature... lanes) {
    return Identification.of(List.of(lanes), MatchSettings.defaults()).get(0);
  }

  /** The sets of references that explain it. */
  static List<List<String>> names(UnknownReading reading) {
    return reading.explanations().stream().map(UnknownReading.Explanation::references).toList();
  }

  /** A dye at a place on the strip. */
  record Dye(
      DyeAbsorbance absorbance,
      double rf,
      double depth,
      double halfHeight,
      double confidence,
      Set<SpotFlag> flags) {

    static Dye of(DyeAbsorbance absorbance, double rf) {
      return new Dye(absorbance, rf, 0.5, 0.05, 1, Set.of());
    }

    Dye deep(double changed) {
      return new Dye(absorbance, rf, changed, halfHeight, confidence, flags);
    }

    Dye tall(double changed) {
      return new Dye(absorbance, rf, depth, changed, confidence, flags);
    }

    Dye doubtful(double changed) {
      return new Dye(absorbance, rf, depth, halfHeight, changed, flags);
    }

    Dye flagged(SpotFlag flag) {
      return new Dye(absorbance, rf, depth, halfHeight, confidence, Set.of(flag));
    }
  }
}
