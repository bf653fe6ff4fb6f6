package wickmark.core.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import wickmark.core.check.MeasuredSheet.MeasuredLane;
import wickmark.core.check.MeasuredSheet.MeasuredSpot;

/**
 * Invented sheets, and readings of them with a ruler: 3 to 5 lanes of 1 to 3 spots at least 9 mm
 * apart, the front at 60 to 100 mm, spots half 3 to 6 mm long.
 */
final class RandomSheet {
  /** How far readings of one length lie apart, as a standard deviation, mm. */
  private static final double SCATTER_MM = 0.5;

  private static final double LEAST_DISTANCE_MM = 9;

  /** Standard uncertainties of the machine's spots and fronts, mm. */
  private static final double SPOT_UNCERTAINTY = 0.12;

  private static final double FRONT_UNCERTAINTY = 0.15;

  private RandomSheet() {}

  /** Where a person reads the front (spot 0) or a spot (from 1), mm above the baseline. */
  interface Aim {
    double mm(MeasuredSheet sheet, MeasuredLane lane, int spot);
  }

  static MeasuredSheet of(Random random) {
    int count = 3 + random.nextInt(3);
    double front = 60 + 40 * random.nextDouble();
    double margin = 15 + 10 * random.nextDouble();
    double paperTop = front + 8 + 12 * random.nextDouble();
    List<MeasuredLane> lanes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<MeasuredSpot> spots = spots(centres(front, random), random);
      lanes.add(
          new MeasuredLane(
              String.valueOf((char) ('A' + i)), front, FRONT_UNCERTAINTY, margin, paperTop, spots));
    }
    return new MeasuredSheet(lanes);
  }

  private static double[] centres(double front, Random random) {
    double[] centres = new double[1 + random.nextInt(3)];
    boolean apart = false;
    while (!apart) {
      for (int j = 0; j < centres.length; j++) {
        centres[j] = 8 + (front - 12) * random.nextDouble();
      }
      Arrays.sort(centres);
      apart = true;
      for (int j = 1; j < centres.length; j++) {
        apart &= centres[j] - centres[j - 1] >= LEAST_DISTANCE_MM;
      }
    }
    return centres;
  }

  private static List<MeasuredSpot> spots(double[] centres, Random random) {
    List<MeasuredSpot> spots = new ArrayList<>();
    for (int j = centres.length - 1; j >= 0; j--) {
      double half = 3 + 3 * random.nextDouble();
      spots.add(
          new MeasuredSpot(centres[j], SPOT_UNCERTAINTY, centres[j] + half, centres[j] - half));
    }
    return spots;
  }

  /** Where a person reads who reads rightly. */
  static double truth(MeasuredLane lane, int spot) {
    return spot == 0 ? lane.front() : lane.spots().get(spot - 1).middle();
  }

  /** Returns readings to whole millimetres, written in a unit of so many millimetres. */
  static List<HandReading> read(MeasuredSheet sheet, Aim aim, double unitMm, Random random) {
    List<HandReading> rows = new ArrayList<>();
    for (MeasuredLane lane : sheet.lanes()) {
      BigDecimal front = written(aim.mm(sheet, lane, 0), unitMm, random);
      for (int spot = 1; spot <= lane.spots().size(); spot++) {
        BigDecimal distance = written(aim.mm(sheet, lane, spot), unitMm, random);
        BigDecimal least = unitMm == 1 ? BigDecimal.ONE : new BigDecimal("0.10");
        rows.add(row(lane.name(), spot, distance.signum() > 0 ? distance : least, front));
      }
    }
    return rows;
  }

  private static HandReading row(String lane, int spot, BigDecimal distance, BigDecimal front) {
    BigDecimal rf = distance.divide(front, 2, RoundingMode.HALF_UP);
    return new HandReading(
        "p",
        lane,
        spot,
        Optional.of(distance),
        Optional.of(front),
        Optional.of(rf),
        Optional.empty(),
        "readings");
  }

  private static BigDecimal written(double mm, double unitMm, Random random) {
    double read = Math.rint(mm + SCATTER_MM * random.nextGaussian());
    int decimals = unitMm == 1 ? 0 : unitMm == 10 ? 1 : 2;
    return BigDecimal.valueOf(read / unitMm).setScale(decimals, RoundingMode.HALF_UP);
  }
}
