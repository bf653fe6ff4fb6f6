package wickmark.testdata.set;

import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;

/**
 * What {@link DrawSet} is asked for.
 *
 * @param only tag that a picture must have to be drawn; empty for all
 */
record DrawSetOptions(Path out, int count, long seed, String only) {

  static DrawSetOptions of(List<String> arguments) {
    Path out = Path.of("drawn-set");
    int count = Recipes.ALL.size();
    long seed = 1;
    String only = "";
    for (Iterator<String> words = arguments.iterator(); words.hasNext(); ) {
      String word = words.next();
      if (!words.hasNext()) {
        throw new IllegalArgumentException(word + " needs a value after it");
      }
      String value = words.next();
      switch (word) {
        case "--out" -> out = Path.of(value);
        case "--count" -> count = Integer.parseInt(value);
        case "--seed" -> seed = Long.parseLong(value);
        case "--only" -> only = value;
        default ->
            throw new IllegalArgumentException(
                "unknown option " + word + "; known: --out, --count, --seed, --only");
      }
    }
    return new DrawSetOptions(out, count, seed, only);
  }
}
