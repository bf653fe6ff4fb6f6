package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
    List<List<Integer>> spots = new ArrayList<>();
    IntStream.range(0, fit.shapes().size())
        .boxed()
        .sorted(Comparator.comparingDouble(j -> -fit.height(j)))
        .forEach(
            peak ->
                spots.stream()
                    .filter(spot -> spot.stream().anyMatch(other -> parting.one(fit, peak, other)))
                    .findFirst()
                    .ifPresentOrElse(
                        spot -> spot.add(peak), () -> spots.add(new ArrayList<>(List.of(peak)))));
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
