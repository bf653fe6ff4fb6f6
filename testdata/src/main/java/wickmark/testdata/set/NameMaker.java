package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.List;
import wickmark.testdata.noise.Dice;

/** Names as people pencil them under the lanes; the last is the unknown's. */
final class NameMaker {
  private static final List<List<String>> STYLES =
      List.of(
          List.of("A", "B", "C", "D", "E"),
          List.of("P", "Q", "R", "S", "T"),
          List.of("1", "2", "3", "4", "5"),
          List.of("S1", "S2", "S3", "S4", "S5"),
          List.of("a", "b", "c", "d", "e"),
          List.of("K1", "K2", "K3", "K4", "K5"));
  private static final List<String> UNKNOWN = List.of("X", "U", "?", "M", "mix");

  private final Dice dice;

  NameMaker(Dice dice) {
    this.dice = dice;
  }

  List<String> names(int count) {
    List<String> names = new ArrayList<>(dice.pick(STYLES).subList(0, count - 1));
    names.add(dice.pick(UNKNOWN));
    return names;
  }
}
