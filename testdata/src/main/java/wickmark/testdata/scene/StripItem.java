package wickmark.testdata.scene;

import java.util.List;
import wickmark.testdata.strip.StripPlan;

/**
 * A strip on the desk.
 *
 * @param placement where the middle of the (flattened) sheet is
 * @param bends how it does not lie flat; none for a flat sheet
 * @param developed whether it is one to measure; an unused strip has no truth in the picture
 */
public record StripItem(StripPlan plan, Placement placement, List<Bend> bends, boolean developed) {
  public StripItem {
    bends = List.copyOf(bends);
  }

  /** Returns a flat strip to measure. */
  public static StripItem of(StripPlan plan, Placement placement) {
    return new StripItem(plan, placement, List.of(), true);
  }

  public StripItem bent(Bend... how) {
    return new StripItem(plan, placement, List.of(how), developed);
  }

  /** Returns the same as a strip that nobody wants measured. */
  public StripItem unused() {
    return new StripItem(plan, placement, bends, false);
  }
}
