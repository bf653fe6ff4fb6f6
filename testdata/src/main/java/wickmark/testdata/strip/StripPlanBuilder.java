package wickmark.testdata.strip;

import java.util.ArrayList;
import java.util.List;
import wickmark.testdata.truth.PointMm;

/** Puts a {@link StripPlan} together; what is not said is a plain, well-made strip. */
public final class StripPlanBuilder {
  private final double widthMm;
  private final double heightMm;
  private Paper paper = Paper.FILTER;
  private Cut cut = Cut.GUILLOTINE;
  private Baseline baseline;
  private SolventFront front;
  private final List<LanePlan> lanes = new ArrayList<>();
  private final List<PencilMark> marks = new ArrayList<>();
  private final List<Blemish> blemishes = new ArrayList<>();
  private long seed = 1;

  StripPlanBuilder(double widthMm, double heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
    this.baseline = new Baseline(20, 0, 0.5, widthMm - 0.5, Lead.USUAL, true);
    this.front = new SolventFront(heightMm - 15, 0, 0, SolventFront.Mark.PENCIL, 0.01, 0.004);
  }

  public StripPlanBuilder paper(Paper value) {
    this.paper = value;
    return this;
  }

  public StripPlanBuilder cut(Cut value) {
    this.cut = value;
    return this;
  }

  /**
   * Draws the baseline with the usual pencil from edge to edge at that height, rising to the right.
   */
  public StripPlanBuilder baseline(double atMm, double slopeDeg) {
    return baseline(new Baseline(atMm, slopeDeg, 0.5, widthMm - 0.5, Lead.USUAL, true));
  }

  public StripPlanBuilder baseline(Baseline value) {
    this.baseline = value;
    return this;
  }

  /** Marks a straight front with a pencil line at that height. */
  public StripPlanBuilder front(double atMm) {
    return front(new SolventFront(atMm, 0, 0, SolventFront.Mark.PENCIL, 0.01, 0.004));
  }

  public StripPlanBuilder front(SolventFront value) {
    this.front = value;
    return this;
  }

  public StripPlanBuilder lane(LanePlan lane) {
    lanes.add(lane);
    return this;
  }

  /** Adds a lane and its name in pencil below the baseline. */
  public StripPlanBuilder namedLane(LanePlan lane) {
    double y = baseline.heightMm() - 8;
    marks.add(
        new PencilMark.Lettering(lane.name(), new PointMm(lane.xMm(), y), 4.5, 0, Lead.USUAL));
    return lane(lane);
  }

  public StripPlanBuilder mark(PencilMark mark) {
    marks.add(mark);
    return this;
  }

  public StripPlanBuilder blemish(Blemish blemish) {
    blemishes.add(blemish);
    return this;
  }

  public StripPlanBuilder seed(long value) {
    this.seed = value;
    return this;
  }

  public StripPlan build() {
    return new StripPlan(
        new Sheet(widthMm, heightMm, paper, cut),
        new StripPlan.Lines(baseline, front),
        lanes,
        marks,
        blemishes,
        seed);
  }
}
