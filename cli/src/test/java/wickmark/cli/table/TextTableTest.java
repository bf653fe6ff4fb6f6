package wickmark.cli.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {
  @Test
  void alignsTextLeftAndNumbersRight() {
    TextTable table = new TextTable("lr", List.of("lane", "mm"));
    table.add(List.of("A", "5.0"));
    table.add(List.of("long", "12.5"));

    assertThat(table.lines()).containsExactly("lane    mm", "A      5.0", "long  12.5");
  }

  @Test
  void wideCharactersTakeTwoColumns() {
    TextTable table = new TextTable("lr", List.of("lane", "mm"));
    table.add(List.of("青色", "5"));

    assertThat(table.lines()).containsExactly("lane  mm", "青色   5");
  }

  @Test
  void marksThatTurnTheWritingAreShown() {
    assertThat(TextTable.printable("a\u202Eb\u001B[31m")).isEqualTo("a?b?[31m");
  }
}
