package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import seamsoak.schedule.demand.QuenchChoice;

/** Still air, every quenchant at hand and the one taken, side by side for one blade. */
record Media(QuenchChoice.Asked asked) {
  private static final String STILL_AIR = "still-air";

  /** Slowest first; still air is told though nobody names it as a quenchant. */
  List<ScheduleAdvice.Medium> of(List<QuenchChoice> choices, QuenchChoice chosen) {
    List<QuenchChoice> all = new ArrayList<>(choices);
    if (!chosen.atHand()) {
      all.add(chosen);
    }
    if (all.stream().noneMatch(c -> c.quenchant().id().equals(STILL_AIR))) {
      all.add(asked.in(STILL_AIR, true));
    }
    return all.stream()
        .map(c -> medium(c, c == chosen))
        .sorted(Comparator.comparingDouble(ScheduleAdvice.Medium::takesSeconds).reversed())
        .toList();
  }

  private ScheduleAdvice.Medium medium(QuenchChoice c, boolean chosen) {
    QuenchChoice.Response any = c.steels().get(0);
    return new ScheduleAdvice.Medium(
        c.quenchant().id(),
        c.quenchant().name(),
        c.atHand(),
        any.result().coreSeconds8to5(),
        any.result().greatestDifferenceKelvin(),
        chosen,
        c.steels().stream().map(this::response).toList());
  }

  private ScheduleAdvice.InMedium response(QuenchChoice.Response r) {
    return new ScheduleAdvice.InMedium(
        r.steel().id(),
        r.allowsSeconds(),
        r.result().edgeHrc().value(),
        r.result().coreHrc().value(),
        r.edge(),
        r.middle(),
        r.tooFast(asked.section()));
  }
}
