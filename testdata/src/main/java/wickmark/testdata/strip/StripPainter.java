package wickmark.testdata.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wickmark.testdata.colour.Cielab;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.truth.FrontTruth;
import wickmark.testdata.truth.LaneTruth;
import wickmark.testdata.truth.PointMm;
import wickmark.testdata.truth.Role;
import wickmark.testdata.truth.SegmentMm;
import wickmark.testdata.truth.SheetTruth;
import wickmark.testdata.truth.SpotTruth;
import wickmark.testdata.truth.StripTruth;
import wickmark.testdata.truth.UnknownTruth;

/**
 * Paints a strip from its plan: optical densities of all that lies on the paper add up
 * (Beer-Lambert), and the light that is left is what the camera will see.
 */
public final class StripPainter {
  private static final int FRONT_POINTS = 25;

  private final StripPlan plan;
  private final Raster raster;
  private final DensityPlanes planes;
  private final PaperTexture paper;
  private final PencilPainter pencil;
  private final SheetEdges edges;
  private final SegmentMm baseline;
  private final Dice dice;

  private StripPainter(StripPlan plan, double pxPerMm) {
    this.plan = plan;
    this.raster = Raster.of(plan.sheet(), pxPerMm);
    this.planes = new DensityPlanes(raster);
    this.dice = new Dice(plan.seed());
    this.paper = new PaperTexture(plan.sheet().paper(), dice.seed());
    this.pencil = new PencilPainter(raster, paper, dice.seed());
    this.edges = new SheetEdges(plan.sheet(), plan.blemishes(), dice.seed());
    this.baseline = baseline();
  }

  /**
   * Paints a strip.
   *
   * @param pxPerMm fineness of the painting, above 0; a little finer than the picture to be drawn
   */
  public static PaintedStrip paint(StripPlan plan, double pxPerMm) {
    return new StripPainter(plan, pxPerMm).paint();
  }

  private PaintedStrip paint() {
    new BlemishPainter(plan, planes, dice.seed()).paintAll();
    List<LaneTruth> lanes = new ArrayList<>();
    for (LanePlan lane : plan.lanes()) {
      lanes.add(lane(lane));
    }
    lines();
    plan.marks().forEach(pencil::draw);
    pencil.addTo(planes);
    return new PaintedStrip(raster, reflectance(), edges, truth(lanes));
  }

  private LaneTruth lane(LanePlan lane) {
    LaneWay way = LaneWay.of(lane, plan, baseline);
    SpotTruthFinder finder = new SpotTruthFinder(raster, plan.sheet().paper().white(), way);
    SpotPainter painter = new SpotPainter(plan, planes);
    List<SpotTruth> spots = new ArrayList<>();
    for (SpotPlan spot : lane.spots()) {
      spots.add(finder.truth(painter.paint(spot, way, dice.seed())));
    }
    spots.sort(Comparator.comparingDouble(SpotTruth::distanceMm));
    List<SpotTruth> numbered = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      numbered.add(numbered(spots, i));
    }
    return new LaneTruth(
        lane.name(), lane.role(), way.origin(), way.frontPoint(), way.frontMm(), numbered);
  }

  private static SpotTruth numbered(List<SpotTruth> spots, int index) {
    SpotTruth spot = spots.get(index);
    boolean overlapped = false;
    for (int other = 0; other < spots.size(); other++) {
      overlapped |=
          other != index
              && spots.get(other).extent().bottomDistanceMm() < spot.extent().topDistanceMm()
              && spots.get(other).extent().topDistanceMm() > spot.extent().bottomDistanceMm();
    }
    List<String> flags = new ArrayList<>(spot.flags());
    if (overlapped) {
      flags.add("overlapped");
    }
    return new SpotTruth(index + 1, spot.dye(), spot.residue(), flags, spot.where(), spot.look());
  }

  private SegmentMm baseline() {
    Baseline line = plan.lines().baseline();
    double slope = StrictMath.tan(StrictMath.toRadians(line.slopeDeg()));
    double middle = plan.sheet().widthMm() / 2;
    return new SegmentMm(
        new PointMm(line.fromMm(), line.heightMm() + slope * (line.fromMm() - middle)),
        new PointMm(line.toMm(), line.heightMm() + slope * (line.toMm() - middle)));
  }

  private void lines() {
    Baseline line = plan.lines().baseline();
    if (line.drawn()) {
      pencil.line(baseline.from(), baseline.to(), line.lead(), 0.04);
    }
    SolventFront front = plan.lines().front();
    double width = plan.sheet().widthMm();
    if (front.heightMm() >= plan.sheet().heightMm() || front.mark() == SolventFront.Mark.NONE) {
      return;
    }
    PointMm left = new PointMm(0.3, front.heightAt(0.3, width));
    PointMm right = new PointMm(width - 0.3, front.heightAt(width - 0.3, width));
    if (front.mark() == SolventFront.Mark.TICKS) {
      double tick = front.tickMm();
      pencil.line(left, new PointMm(tick, front.heightAt(tick, width)), Lead.USUAL, 0);
      pencil.line(
          new PointMm(width - tick, front.heightAt(width - tick, width)), right, Lead.USUAL, 0);
      return;
    }
    Lead lead = line.lead().withAbsorbance(line.lead().absorbance() * 0.8);
    for (int i = 0; i + 1 < FRONT_POINTS; i++) {
      pencil.line(frontPoint(i), frontPoint(i + 1), lead, 0.02);
    }
  }

  private PointMm frontPoint(int index) {
    double width = plan.sheet().widthMm();
    SolventFront front = plan.lines().front();
    Figure figure = plan.sheet().cut().figure();
    // To the sheet's sides, which lie inwards where it is no rectangle.
    double up = front.heightMm() / plan.sheet().heightMm();
    double left = up * figure.leftInMm();
    double right = width - up * figure.rightInMm();
    double x = left + (right - left) * index / (FRONT_POINTS - 1);
    return new PointMm(x, front.heightAt(x, width));
  }

  private float[] reflectance() {
    LinearRgb white = plan.sheet().paper().white();
    float[] reflectance = new float[3 * raster.size()];
    for (int row = 0; row < raster.heightPx(); row++) {
      for (int column = 0; column < raster.widthPx(); column++) {
        int i = row * raster.widthPx() + column;
        float factor = (float) paper.factorAt(raster.x(column), raster.y(row));
        reflectance[3 * i] = (float) white.red() * factor * Decadic.left(planes.red[i]);
        reflectance[3 * i + 1] = (float) white.green() * factor * Decadic.left(planes.green[i]);
        reflectance[3 * i + 2] = (float) white.blue() * factor * Decadic.left(planes.blue[i]);
      }
    }
    return reflectance;
  }

  private StripTruth truth(List<LaneTruth> lanes) {
    Sheet sheet = plan.sheet();
    SolventFront front = plan.lines().front();
    List<PointMm> frontPoints = new ArrayList<>();
    boolean present = front.heightMm() < sheet.heightMm();
    for (int i = 0; present && i < FRONT_POINTS; i++) {
      frontPoints.add(frontPoint(i));
    }
    MixtureTruth mixtures = new MixtureTruth(lanes);
    List<UnknownTruth> unknowns =
        lanes.stream().filter(lane -> lane.role() == Role.UNKNOWN).map(mixtures::explain).toList();
    return new StripTruth(
        new SheetTruth(
            sheet.widthMm(), sheet.heightMm(), edges.corners(), Cielab.of(sheet.paper().white())),
        baseline,
        new FrontTruth(front.mark().word(), frontPoints),
        lanes,
        unknowns);
  }
}
