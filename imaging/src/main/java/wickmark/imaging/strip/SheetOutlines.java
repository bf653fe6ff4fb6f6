package wickmark.imaging.strip;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Outlines of what may be sheets. They overlap: a sheet is often outlined in several ways.
 *
 * @param first those that are worth looking at whatever lies on the others, best first
 * @param further those of lower rank, of interest where none of the first lies
 */
public record SheetOutlines(List<StripOutline> first, List<StripOutline> further) {
  public SheetOutlines {
    first = List.copyOf(first);
    further = List.copyOf(further);
  }

  /** Outlines that are all to be looked at. */
  public static SheetOutlines of(StripOutline... first) {
    return new SheetOutlines(List.of(first), List.of());
  }

  /** All of them, the first ones first. */
  public Stream<StripOutline> stream() {
    return Stream.concat(first.stream(), further.stream());
  }

  /** Those for which something holds. */
  public SheetOutlines where(Predicate<StripOutline> holds) {
    return new SheetOutlines(
        first.stream().filter(holds).toList(), further.stream().filter(holds).toList());
  }

  /** Each of them seen in another way. */
  public SheetOutlines map(UnaryOperator<StripOutline> seen) {
    return new SheetOutlines(
        first.stream().map(seen).toList(), further.stream().map(seen).toList());
  }
}
