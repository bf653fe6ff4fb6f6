package wickmark.core.pool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wickmark.core.colour.DyeAbsorbance;
import wickmark.core.colour.LabColour;
import wickmark.core.record.RunRecord;

/**
 * Puts spots of repeated lanes together: lane by lane, each spot joins the group that is nearest in
 * Rf and colour, one spot a lane at most, or starts a group of its own.
 */
final class SpotGroups {
  /**
   * How far the same spot may lie apart in Rf on two strips: practice sees 0.02 to 0.05 between
   * sheets, and a class up to 0.1 (class table of a school experiment: standard deviation 0.053).
   */
  private static final double FARTHEST = 0.1;

  /** Beyond this difference at like depth two spots have two colours. */
  private static final double COLOUR_TOLERANCE = 8;

  private static final String ORIGIN = "at-origin";

  /** A spot of a lane. */
  record Member(PooledStrips.Value value, LabColour colour) {}

  private record Join(int member, int group, double cost) {}

  private SpotGroups() {}

  /** The spots of a lane that have moved. */
  static List<Member> members(int record, RunRecord.Lane lane) {
    List<Member> members = new ArrayList<>();
    for (RunRecord.Spot spot : lane.spots()) {
      if (!spot.flags().contains(ORIGIN)) {
        members.add(
            new Member(
                new PooledStrips.Value(
                    record, spot.number(), spot.rf(), spot.rfUncertainty(), spot.colour()),
                new LabColour(spot.lab().get(0), spot.lab().get(1), spot.lab().get(2))));
      }
    }
    return members;
  }

  /** Returns the groups, the one nearest the front first. */
  static List<List<PooledStrips.Value>> of(List<List<Member>> lanes) {
    List<List<Member>> groups = new ArrayList<>();
    for (List<Member> lane : lanes) {
      join(lane, groups);
    }
    return groups.stream()
        .sorted(Comparator.comparingDouble(group -> -meanRf(group)))
        .map(group -> group.stream().map(Member::value).toList())
        .toList();
  }

  private static void join(List<Member> lane, List<List<Member>> groups) {
    List<Join> joins = new ArrayList<>();
    for (int i = 0; i < lane.size(); i++) {
      for (int j = 0; j < groups.size(); j++) {
        double rf = Math.abs(lane.get(i).value().rf() - meanRf(groups.get(j))) / FARTHEST;
        double colour = meanColourDifference(lane.get(i), groups.get(j)) / COLOUR_TOLERANCE;
        if (rf <= 1 && colour <= 1) {
          joins.add(new Join(i, j, rf * rf + colour * colour));
        }
      }
    }
    joins.sort(Comparator.comparingDouble(Join::cost));
    boolean[] hasJoined = new boolean[lane.size()];
    boolean[] isTaken = new boolean[groups.size()];
    for (Join join : joins) {
      if (!hasJoined[join.member()] && !isTaken[join.group()]) {
        groups.get(join.group()).add(lane.get(join.member()));
        hasJoined[join.member()] = true;
        isTaken[join.group()] = true;
      }
    }
    for (int i = 0; i < lane.size(); i++) {
      if (!hasJoined[i]) {
        groups.add(new ArrayList<>(List.of(lane.get(i))));
      }
    }
  }

  private static double meanRf(List<Member> group) {
    double sum = 0;
    for (Member member : group) {
      sum += member.value().rf();
    }
    return sum / group.size();
  }

  private static double meanColourDifference(Member spot, List<Member> group) {
    double sum = 0;
    for (Member member : group) {
      sum += DyeAbsorbance.differenceAtLikeStrength(spot.colour(), member.colour()).value();
    }
    return sum / group.size();
  }
}
