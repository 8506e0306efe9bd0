package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import seamsoak.billet.Shop;
import seamsoak.heat.Section;
import seamsoak.heat.SectionCurve;
import seamsoak.property.Correlations;
import seamsoak.property.hardening.Quenchant;
import seamsoak.unit.Temperature;

/**
 * Still air and every quenchant at hand, side by side for one blade.
 *
 * @param k the correlations
 * @param section that is cooled
 * @param celsius heat it is hardened from
 * @param grainNumber of the austenite
 */
record Media(Correlations k, Section section, double celsius, double grainNumber) {
  private static final String STILL_AIR = "still-air";
  private static final double ZERO = Temperature.ZERO_CELSIUS;

  /** Slowest first; still air is told though nobody names it as a quenchant. */
  List<ScheduleAdvice.Medium> of(List<QuenchChoice> choices, QuenchChoice chosen) {
    List<ScheduleAdvice.Medium> all = new ArrayList<>();
    if (choices.stream().noneMatch(c -> c.quenchant().id().equals(STILL_AIR))) {
      all.add(stillAir(chosen));
    }
    choices.forEach(c -> all.add(bath(c, c == chosen)));
    all.sort(Comparator.comparingDouble(ScheduleAdvice.Medium::takesSeconds).reversed());
    return List.copyOf(all);
  }

  private static ScheduleAdvice.Medium bath(QuenchChoice c, boolean chosen) {
    QuenchChoice.Response any = c.steels().get(0);
    return new ScheduleAdvice.Medium(
        c.quenchant().id(),
        c.quenchant().name(),
        any.result().coreSeconds8to5(),
        any.result().greatestDifferenceKelvin(),
        chosen,
        c.steels().stream().map(QuenchChoice.Response::middle).toList());
  }

  private ScheduleAdvice.Medium stillAir(QuenchChoice chosen) {
    Quenchant air = k.hardening().quenchants().find(STILL_AIR).orElseThrow();
    SectionCurve curve = k.sections().coolInAir(section, Shop.DULL_KELVIN, 500 + ZERO);
    return new ScheduleAdvice.Medium(
        air.id(),
        air.name(),
        curve.coreSecondsBetween(800 + ZERO, 500 + ZERO).orElseThrow(),
        curve.greatestDifferenceKelvin(),
        false,
        chosen.steels().stream().map(t -> t.steel().inAir(section, celsius, grainNumber)).toList());
  }
}
