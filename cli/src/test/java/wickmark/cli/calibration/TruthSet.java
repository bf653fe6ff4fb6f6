package wickmark.cli.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.PictureMeasuring;
import wickmark.imaging.ReadingRequest;
import wickmark.imaging.photo.Photo;

/** A folder of pictures with the truths of the strips in them. */
final class TruthSet {
  private TruthSet() {}

  /** The strips in each picture, from the left, by the picture's file name. */
  static SortedMap<String, List<TruthFile>> read(Path folder) throws IOException {
    List<Path> truths;
    try (Stream<Path> files = Files.list(folder)) {
      truths = files.filter(f -> f.toString().endsWith(".truth.json")).sorted().toList();
    }
    SortedMap<String, List<TruthFile>> byPicture = new TreeMap<>();
    for (Path path : truths) {
      TruthFile truth = TruthFile.read(path);
      byPicture.computeIfAbsent(truth.file(), name -> new ArrayList<>()).add(truth);
    }
    return byPicture;
  }

  /** Measures a picture as a command does. */
  static List<MeasuredStrip> measured(Photo photo, ReadingRequest said) {
    return new PictureMeasuring().measure(photo, MeasuringRequest.of(said));
  }

  /** What a person says who names the lanes: one list for all strips of a picture. */
  static ReadingRequest named(List<TruthFile> strips) {
    ReadingRequest nothing = ReadingRequest.nothing();
    List<TruthFile.Lane> lanes = strips.get(0).lanes();
    Set<String> unknowns =
        lanes.stream()
            .filter(lane -> lane.role().equals("unknown"))
            .map(TruthFile.Lane::name)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return new ReadingRequest(
        lanes.stream().map(TruthFile.Lane::name).toList(),
        unknowns,
        OptionalInt.empty(),
        nothing.scale(),
        nothing.strip(),
        nothing.lines());
  }
}
