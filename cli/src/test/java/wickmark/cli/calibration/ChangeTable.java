package wickmark.cli.calibration;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.photo.PhotoFile;
import wickmark.cli.photo.UnreadablePictureException;
import wickmark.core.record.RunRecord;
import wickmark.imaging.ReadingRequest;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.Resolution;
import wickmark.testdata.picture.Picture;
import wickmark.testdata.picture.PictureChange;

/**
 * Measures pictures with truths, the lanes' names said, as they are and after each {@link
 * PictureChange}, and prints how far what is read of the changed one differs. Run it with the
 * folders of the pictures as its arguments. Pictures with several strips are left out.
 */
public final class ChangeTable {
  /** An Rf that is farther from that of the untouched picture has moved. */
  private static final double MOVED = 0.004;

  private final Map<PictureChange, Tally> tallies = new EnumMap<>(PictureChange.class);
  private final PrintStream out;

  private ChangeTable(PrintStream out) {
    this.out = out;
  }

  /** What came of the pictures of one change. */
  private static final class Tally {
    private int pictures;
    private int refused;
    private int silent;
    private int otherSpots;
    private int moved;
    private double largest;
  }

  /** Prints each picture that is read otherwise, then the table. */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length == 0) {
      throw new IllegalArgumentException("say folders of pictures with their truths");
    }
    ChangeTable table = new ChangeTable(new PrintStream(System.out, true, StandardCharsets.UTF_8));
    for (String folder : arguments) {
      table.measure(Path.of(folder));
    }
    table.print();
  }

  private void measure(Path folder) throws IOException {
    for (Map.Entry<String, List<TruthFile>> picture : TruthSet.read(folder).entrySet()) {
      List<TruthFile> strips = picture.getValue();
      if (strips.size() > 1 || strips.get(0).toRefuse()) {
        continue;
      }
      try {
        measure(strips.get(0), PhotoFile.read(folder.resolve(picture.getKey())).photo());
      } catch (UnreadablePictureException e) {
        out.printf("- %s: %s%n", picture.getKey(), e.getMessage());
      }
    }
  }

  private void measure(TruthFile truth, Photo photo) {
    ReadingRequest named = TruthSet.named(List.of(truth));
    if (!(only(TruthSet.measured(photo, named)) instanceof MeasuredStrip.Done untouched)) {
      out.printf("- %s: refused as it is%n", truth.name());
      return;
    }
    Picture picture = picture(photo);
    for (PictureChange change : PictureChange.values()) {
      Tally tally = tallies.computeIfAbsent(change, c -> new Tally());
      tally.pictures++;
      MeasuredStrip strip =
          only(TruthSet.measured(photo(change.of(picture), change, photo), named));
      if (strip instanceof MeasuredStrip.Done done) {
        compare(truth, change, untouched.record(), done.record(), tally);
        boolean silent = StripScore.of(truth.scaled(change.size()), done).isSilentlyWrong();
        tally.silent += silent ? 1 : 0;
      } else {
        tally.refused++;
        out.printf("- %s %s: refused%n", truth.name(), change);
      }
    }
  }

  /** The one strip; several are taken for a refusal, for they are not what was there. */
  private static MeasuredStrip only(List<MeasuredStrip> strips) {
    return strips.size() == 1
        ? strips.get(0)
        : new MeasuredStrip.Refused(strips.size() + " strips in the picture");
  }

  private void compare(
      TruthFile truth, PictureChange change, RunRecord before, RunRecord after, Tally tally) {
    List<List<Double>> was = rf(before);
    List<List<Double>> is = rf(after);
    if (!was.stream().map(List::size).toList().equals(is.stream().map(List::size).toList())) {
      tally.otherSpots++;
      out.printf("- %s %s: spots %s, were %s%n", truth.name(), change, is, was);
      return;
    }
    double largest = 0;
    for (int lane = 0; lane < was.size(); lane++) {
      for (int spot = 0; spot < was.get(lane).size(); spot++) {
        double from = was.get(lane).get(spot);
        double to = is.get(lane).get(spot);
        largest = Math.max(largest, Math.abs(to - from));
        if (Math.abs(to - from) > MOVED) {
          out.printf(
              Locale.ROOT,
              "- %s %s: lane %s, Rf %.4f, was %.4f%n",
              truth.name(),
              change,
              before.lanes().get(lane).name(),
              to,
              from);
        }
      }
    }
    tally.moved += largest > MOVED ? 1 : 0;
    tally.largest = Math.max(tally.largest, largest);
  }

  private static List<List<Double>> rf(RunRecord record) {
    List<List<Double>> all = new ArrayList<>();
    for (RunRecord.Lane lane : record.lanes()) {
      all.add(lane.spots().stream().map(RunRecord.Spot::rf).sorted().toList());
    }
    return all;
  }

  private static Picture picture(Photo photo) {
    byte[] rgb = new byte[3 * photo.widthPx() * photo.heightPx()];
    for (int i = 0; i < rgb.length; i++) {
      rgb[i] = (byte) photo.sample(i);
    }
    return new Picture(photo.widthPx(), photo.heightPx(), rgb);
  }

  /** The changed pixels with what the file says of the camera or the scanner. */
  private static Photo photo(Picture picture, PictureChange change, Photo before) {
    boolean isOnItsSide =
        change == PictureChange.TURNED_RIGHT || change == PictureChange.TURNED_LEFT;
    return new Photo(
        picture.widthPx(),
        picture.heightPx(),
        picture.rgb(),
        before
            .resolution()
            .map(
                r ->
                    new Resolution(
                        change.size() * (isOnItsSide ? r.dpiY() : r.dpiX()),
                        change.size() * (isOnItsSide ? r.dpiX() : r.dpiY()))),
        before.focalLength35mm(),
        before.fromCamera());
  }

  private void print() {
    out.println();
    out.println(
        "| change | pictures | refused | silent wrong | other number of spots | moved | largest move |");
    out.println("| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
    tallies.forEach(
        (change, tally) ->
            out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %d | %.4f |%n",
                change,
                tally.pictures,
                tally.refused,
                tally.silent,
                tally.otherSpots,
                tally.moved,
                tally.largest));
  }
}
