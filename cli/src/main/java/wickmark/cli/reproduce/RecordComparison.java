package wickmark.cli.reproduce;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import wickmark.cli.record.RecordJson;
import wickmark.core.record.RunRecord;

/** Compares two records field by field. */
public final class RecordComparison {
  private static final String ABSENT = "absent";
  private static final String VERSION = "tool.version";

  private RecordComparison() {}

  /**
   * Returns every field that differs, the program's version apart, and confidences that the version
   * which wrote the record did not write.
   */
  public static List<Difference> differences(RunRecord recorded, RunRecord now) {
    Map<String, String> before = new TreeMap<>();
    Map<String, String> after = new TreeMap<>();
    flatten("", RecordJson.tree(recorded), before);
    flatten("", RecordJson.tree(now), after);
    TreeSet<String> fields = new TreeSet<>(before.keySet());
    fields.addAll(after.keySet());
    fields.remove(VERSION);
    List<Difference> differences = new ArrayList<>();
    for (String field : fields) {
      String old = before.getOrDefault(field, ABSENT);
      String current = after.getOrDefault(field, ABSENT);
      if (!old.equals(current) && !isNewConfidence(field, old)) {
        differences.add(new Difference(field, old, current));
      }
    }
    return differences;
  }

  /** Only versions that did not write a confidence leave it unknown where there is one now. */
  private static boolean isNewConfidence(String field, String recorded) {
    return recorded.equals("null")
        && (field.endsWith(".confidence") || field.endsWith(".orientationConfidence"));
  }

  private static void flatten(String path, JsonNode node, Map<String, String> into) {
    if (node.isObject() && !node.isEmpty()) {
      node.properties()
          .forEach(
              entry ->
                  flatten(
                      path.isEmpty() ? entry.getKey() : path + "." + entry.getKey(),
                      entry.getValue(),
                      into));
    } else if (node.isArray() && !node.isEmpty()) {
      for (int i = 0; i < node.size(); i++) {
        flatten(path + "[" + i + "]", node.get(i), into);
      }
    } else {
      into.put(path, node.toString());
    }
  }
}
