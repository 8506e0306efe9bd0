package seamsoak.schedule;

import java.util.List;
import java.util.Optional;
import seamsoak.heat.Section;
import seamsoak.property.QuenchedSteel;
import seamsoak.schedule.ScheduleAdvice.Metal;
import seamsoak.schedule.demand.Hardens;
import seamsoak.schedule.demand.QuenchChoice;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.schedule.demand.Tempering;
import seamsoak.source.Estimate;

/** What each steel consists of after a step, and how hard it is. */
final class Structures {
  private static final double LEAST_HRC = 20;
  private static final double PEARLITE_ONLY = 0.65;

  private Structures() {}

  /** Cooled from above the critical range under a guard. */
  static List<Metal> cooled(
      List<SteelNow> steels, Heats heats, double celsius, double grainNumber, boolean slowly) {
    return slowly
        ? softened(steels)
        : steels.stream()
            .map(
                s ->
                    celsius <= s.unchangedToC() && s.hardens()
                        ? metal(s, annealed(s), Optional.empty())
                        : inAir(s, heats, celsius, grainNumber))
            .toList();
  }

  private static Metal inAir(SteelNow s, Heats heats, double celsius, double grainNumber) {
    return switch (s.inAir(heats.section(), celsius, grainNumber)) {
      case YES ->
          metal(
              s,
              Structure.AIR_HARDENED,
              s.beyondFormulas()
                  ? Optional.empty()
                  : onScale(s.quenched(celsius, grainNumber).fullHrc(QuenchedSteel.ROOM_CELSIUS)));
      case PERHAPS -> metal(s, Structure.PERHAPS_AIR_HARDENED, Optional.empty());
      case NO -> metal(s, pearlite(s), inAir(s, heats.section()));
    };
  }

  /** Annealed or held below the critical range. */
  static List<Metal> softened(List<SteelNow> steels) {
    return steels.stream().map(s -> metal(s, annealed(s), Optional.empty())).toList();
  }

  /** Straight from the quench. */
  static List<Metal> quenched(List<SteelNow> steels, QuenchChoice quench, double coldestCelsius) {
    return steels.stream()
        .map(
            s ->
                quench
                    .of(s)
                    .map(taken -> quenched(taken, coldestCelsius))
                    .orElseGet(
                        () ->
                            metal(
                                s,
                                s.ownHeat() ? Structure.NOT_FROM_THIS_HEAT : Structure.NOT_HARDENED,
                                Optional.empty())))
        .toList();
  }

  private static Metal quenched(QuenchChoice.Response taken, double coldestCelsius) {
    QuenchedSteel austenite = taken.austenite();
    double chilled =
        austenite.fullHrc(coldestCelsius).value()
            - austenite.fullHrc(QuenchedSteel.ROOM_CELSIUS).value();
    Structure structure =
        switch (taken.middle()) {
          case YES -> Structure.HARD;
          case PERHAPS -> Structure.HARD_MIDDLE_PERHAPS;
          case NO -> Structure.HARD_SHELL;
        };
    Optional<Estimate> edge = onScale(taken.result().edgeHrc().map(hrc -> hrc + chilled));
    return metal(
        taken.steel(), structure, Optional.of(100 * austenite.retainedShare(coldestCelsius)), edge);
  }

  /** After the tempers. */
  static List<Metal> tempered(List<SteelNow> steels, QuenchChoice quench, Tempering temper) {
    return steels.stream()
        .map(
            s ->
                quench
                    .of(s)
                    .map(
                        taken ->
                            metal(
                                s,
                                taken.middle() == Hardens.NO
                                    ? Structure.TEMPERED_SHELL
                                    : Structure.TEMPERED,
                                onScale(temper.estimate(s))))
                    .orElseGet(() -> metal(s, Structure.SOFT, Optional.empty())))
        .toList();
  }

  private static Metal metal(SteelNow s, Structure structure, Optional<Estimate> hrc) {
    return metal(s, structure, Optional.empty(), hrc);
  }

  private static Metal metal(
      SteelNow s, Structure structure, Optional<Double> retainedPct, Optional<Estimate> hrc) {
    return new Metal(
        s.id(), structure, retainedPct, hrc.map(Estimate::value), hrc.map(Estimate::giveOrTake));
  }

  private static Structure pearlite(SteelNow s) {
    if (s.lines().alwaysAustenite()) {
      return Structure.UNCHANGING;
    }
    if (s.carbonPct() < PEARLITE_ONLY) {
      return s.carbonPct() < 0.02 ? Structure.FERRITE : Structure.PEARLITE_AND_FERRITE;
    }
    return s.overEutectoid() ? Structure.PEARLITE_AND_CARBIDE : Structure.PEARLITE;
  }

  private static Structure annealed(SteelNow s) {
    if (s.lines().alwaysAustenite()) {
      return Structure.UNCHANGING;
    }
    return s.carbonPct() < 0.02 ? Structure.FERRITE : Structure.ANNEALED;
  }

  private static Optional<Estimate> inAir(SteelNow s, Section section) {
    return s.lines().alwaysAustenite() ? Optional.empty() : onScale(s.airCooledHrc(section));
  }

  private static Optional<Estimate> onScale(Estimate hrc) {
    return hrc.value() >= LEAST_HRC ? Optional.of(hrc) : Optional.empty();
  }
}
