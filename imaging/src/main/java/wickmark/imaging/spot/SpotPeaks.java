package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Which peaks of a fit make up one spot. Mostly each is one; but a spot with a long, low tail is no
 * Gaussian whatever its flanks, and a fit then needs a second peak to follow it. As long as there
 * is no valley between them, nor another hue, the two are one spot.
 *
 * @param numbers of the peaks in the fit, the highest first
 */
record SpotPeaks(List<Integer> numbers) {
  SpotPeaks {
    numbers = List.copyOf(numbers);
  }

  /** Groups all peaks of a fit. */
  static List<SpotPeaks> of(PeakFit fit, PeakParting parting) {
    List<Integer> highestFirst =
        IntStream.range(0, fit.shapes().size())
            .boxed()
            .sorted(Comparator.comparingDouble(peak -> -fit.height(peak)))
            .toList();
    List<List<Integer>> spots = new ArrayList<>();
    for (int peak : highestFirst) {
      Optional<List<Integer>> whole =
          spots.stream()
              .filter(spot -> spot.stream().anyMatch(other -> parting.one(fit, peak, other)))
              .findFirst();
      if (whole.isPresent()) {
        whole.get().add(peak);
      } else {
        spots.add(new ArrayList<>(List.of(peak)));
      }
    }
    return spots.stream().map(SpotPeaks::new).toList();
  }

  /** The peak that gives the spot its place. */
  int highest() {
    return numbers.get(0);
  }

  boolean holds(int peak) {
    return numbers.contains(peak);
  }
}
