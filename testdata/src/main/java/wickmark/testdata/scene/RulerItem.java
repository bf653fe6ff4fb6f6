package wickmark.testdata.scene;

/** A ruler on the desk; {@code placement} is that of its middle, its length along its own x. */
public record RulerItem(RulerPlan plan, Placement placement) {}
