package wickmark.cli.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.core.check.HandReading;
import wickmark.core.check.ReadingProblem;

class HandReadingsFileTest {
  @TempDir Path folder;

  private HandReadings read(byte[] bytes) throws Exception {
    return HandReadingsFile.read(Files.write(folder.resolve("hand.csv"), bytes), "");
  }

  private HandReadings read(String... lines) throws Exception {
    return read((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
  }

  private static Optional<BigDecimal> number(String text) {
    return Optional.of(new BigDecimal(text));
  }

  @Nested
  class Layouts {
    @Test
    void columnsInAnyOrderAndTheirPlaceInTheFile() throws Exception {
      HandReadings read = read("rf,spot,lane,distance_mm,reader,front_mm", "0.72,1,A,54,p1,75");

      assertThat(read.problems()).isEmpty();
      assertThat(read.rows())
          .containsExactly(
              new HandReading(
                  "p1",
                  "A",
                  1,
                  number("54"),
                  number("75"),
                  number("0.72"),
                  Optional.empty(),
                  "hand.csv line 2"));
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void commaSemicolonOrTab(String separator) throws Exception {
      HandReadings read =
          read(
              String.join(separator, "lane", "spot", "distance_mm"),
              String.join(separator, "A", "1", "54.5"));

      assertThat(read.rows()).extracting(HandReading::distance).containsExactly(number("54.5"));
    }

    @Test
    void semicolonsWithDecimalCommas() throws Exception {
      HandReadings read = read("lane;spot;distance_mm;rf", "A;1;54,5;0,72");

      assertThat(read.rows().get(0).distance()).isEqualTo(number("54.5"));
      assertThat(read.rows().get(0).rf()).isEqualTo(number("0.72"));
    }

    @Test
    void aTitleAndBlankLinesAboveAndBetween() throws Exception {
      HandReadings read =
          read("Class 9b; measured on Tuesday", "", "lane;spot;distance_mm", ";;", "A;1;54", "");

      assertThat(read.rows()).extracting(HandReading::place).containsExactly("hand.csv line 5");
      assertThat(read.problems()).isEmpty();
    }

    @Test
    void withAByteOrderMark() throws Exception {
      assertThat(read("\uFEFFlane,spot,distance_mm", "A,1,54").rows()).hasSize(1);
    }

    @Test
    void windows1252() throws Exception {
      HandReadings read =
          read("lane,spot,rf\nGrün,1,0.5\n".getBytes(Charset.forName("windows-1252")));

      assertThat(read.rows()).extracting(HandReading::lane).containsExactly("Grün");
    }

    @Test
    void utf16AsSpreadsheetsCallUnicodeText() throws Exception {
      HandReadings read =
          read("\uFEFFlane\tspot\trf\r\nA\t1\t0,5\r\n".getBytes(StandardCharsets.UTF_16LE));

      assertThat(read.rows()).extracting(HandReading::rf).containsExactly(number("0.5"));
    }

    @Test
    void aQuotedLineFeedMovesNoLineNumber() throws Exception {
      HandReadings read = read("lane,spot,rf,reader", "A,1,0.5,\"p\n1\"", "B,1,x,p2");

      assertThat(read.problems())
          .extracting(ReadingProblem::place)
          .containsExactly("hand.csv line 4");
    }
  }

  @Nested
  class Cells {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "54|54",
          "54 mm|54",
          "5.4cm|54",
          "5,4 cm|54",
          "'54|54",
          "54.50|54.50",
          "2 in|50.8",
          "−3|-3"
        })
    void lengthsWithUnits(String cell, String millimetres) throws Exception {
      assertThat(read("lane;spot;distance_mm", "A;1;" + cell).rows().get(0).distance())
          .isEqualTo(number(millimetres));
    }

    @Test
    void centimetresOfTheColumn() throws Exception {
      assertThat(read("lane,spot,distance (cm)", "A,1,5.4").rows().get(0).distance())
          .isEqualTo(number("54"));
    }

    @Test
    void theUnitOfAnRfIsKept() throws Exception {
      assertThat(read("lane,spot,rf", "A,1,0.72 mm").rows().get(0).rfUnit()).contains("mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"about 54", "5.4.5", "=1+1", "@SUM(A1)", "NaN", "1e9999999", "54 56"})
    void noNumberIsNamedAndTheRestIsRead(String cell) throws Exception {
      HandReadings read = read("lane;spot;distance_mm;rf", "A;1;" + cell + ";0,5", "B;1;33;0,4");

      assertThat(read.problems())
          .containsExactly(
              new ReadingProblem("hand.csv line 2", "distance: \"" + cell + "\" is not a number"));
      assertThat(read.rows()).hasSize(2);
      assertThat(read.rows().get(0).distance()).isEmpty();
      assertThat(read.rows().get(0).rf()).isEqualTo(number("0.5"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"05. Apr", "5-Apr", "Apr 05", "05.04.2026", "2026-04-05"})
    void aNumberThatBecameADateIsRecognised(String cell) throws Exception {
      assertThat(read("lane;spot;distance_mm", "A;1;" + cell).problems().get(0).message())
          .contains("is a date");
    }

    @Test
    void anErrorOfTheSpreadsheetIsRecognised() throws Exception {
      assertThat(read("lane;spot;rf", "A;1;#DIV/0!").problems().get(0).message())
          .contains("error that the spreadsheet reports");
    }

    @Test
    void aRowWithoutLaneOrSpotIsNamed() throws Exception {
      HandReadings read = read("lane,spot,rf", ",1,0.5", "A,,0.5", "A,first,0.5", "A,1,0.5");

      assertThat(read.rows()).hasSize(1);
      assertThat(read.problems())
          .extracting(ReadingProblem::place)
          .containsExactly("hand.csv line 2", "hand.csv line 3", "hand.csv line 4");
    }

    @Test
    void decimalCommasBetweenCommasAreNotGuessed() throws Exception {
      HandReadings read = read("lane,spot,distance_mm", "A,1,54,5");

      assertThat(read.rows()).isEmpty();
      assertThat(read.problems().get(0).message()).contains("Decimal commas");
    }

    @Test
    void columnsThatAreNotUsedAreNamed() throws Exception {
      assertThat(read("lane,spot,rf,weather", "A,1,0.5,rain").problems().get(0).message())
          .contains("weather");
    }
  }

  @Nested
  class WhatIsNoTable {
    private void refused(byte[] bytes, String reason) throws IOException {
      Path file = Files.write(folder.resolve("hand.csv"), bytes);
      assertThatThrownBy(() -> HandReadingsFile.read(file, ""))
          .isInstanceOf(UnreadableReadingsException.class)
          .hasMessageStartingWith("hand.csv cannot be read: ")
          .hasMessageContaining(reason);
    }

    @Test
    void aWorkbookUnderTheNameOfATable() throws IOException {
      refused(new byte[] {'P', 'K', 3, 4, 20, 0}, "save it as CSV");
      refused(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0}, "old .xls format");
    }

    @Test
    void nothingAtAll() throws IOException {
      refused(new byte[0], "it is empty");
      refused(" \n\n".getBytes(StandardCharsets.UTF_8), "it is empty");
    }

    @Test
    void somethingBinary() throws IOException {
      refused(new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 0}, "it is no text");
    }

    @Test
    void noColumnNames() throws IOException {
      refused("A,1,54\n".getBytes(StandardCharsets.UTF_8), "lane,spot,distance_mm");
      refused("lane,spot\nA,1\n".getBytes(StandardCharsets.UTF_8), "none of them is distance_mm");
    }

    @Test
    void noFileAndAFolder() {
      for (Path file : List.of(folder.resolve("none.csv"), folder)) {
        assertThatThrownBy(() -> HandReadingsFile.read(file, ""))
            .isInstanceOf(UnreadableReadingsException.class);
      }
    }
  }
}
