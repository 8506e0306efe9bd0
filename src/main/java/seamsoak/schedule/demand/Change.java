package seamsoak.schedule.demand;

import java.util.List;
import seamsoak.property.hardening.PearliteTime;

/**
 * How a piece is held in a kiln on its way down until its austenite has changed.
 *
 * @param celsius near the nose of pearlite
 * @param minutes until the slowest of its steels has changed
 * @param mayNot steels that may not have changed even then
 */
public record Change(double celsius, double minutes, List<String> mayNot) {
  private static final double BELOW_AC1 = 50;
  private static final double AT_MOST = 650;

  public static Change of(List<SteelNow> steels) {
    List<SteelNow> air = steels.stream().filter(Change::inAir).toList();
    List<SteelNow> hard = steels.stream().filter(s -> s.hardens() || inAir(s)).toList();
    double ac1 = hard.stream().mapToDouble(SteelNow::lowestAc1C).min().orElse(AT_MOST + BELOW_AC1);
    return new Change(
        Math.min(AT_MOST, HardeningHeat.round(ac1 - BELOW_AC1)),
        60 * hard.stream().mapToDouble(SteelNow::pearliteHours).max().orElse(1),
        air.stream().map(SteelNow::id).toList());
  }

  private static boolean inAir(SteelNow s) {
    return PearliteTime.mayNot(s.steel().hardenability());
  }
}
