package seamsoak.schedule;

import java.util.List;
import java.util.Optional;
import seamsoak.property.QuenchedSteel;
import seamsoak.schedule.ScheduleAdvice.Metal;
import seamsoak.schedule.demand.Hardens;
import seamsoak.schedule.demand.QuenchChoice;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.schedule.demand.Tempering;

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
                  : hrc(
                      s.quenched(celsius, grainNumber)
                          .fullHrc(QuenchedSteel.ROOM_CELSIUS)
                          .value()));
      case PERHAPS -> metal(s, Structure.PERHAPS_AIR_HARDENED, Optional.empty());
      case NO -> metal(s, pearlite(s), onScale(s));
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
    return new Metal(
        taken.steel().id(),
        switch (taken.middle()) {
          case YES -> Structure.HARD;
          case PERHAPS -> Structure.HARD_MIDDLE_PERHAPS;
          case NO -> Structure.HARD_SHELL;
        },
        Optional.of(100 * austenite.retainedShare(coldestCelsius)),
        hrc(
            taken.result().edgeHrc().value()
                + austenite.fullHrc(coldestCelsius).value()
                - austenite.fullHrc(QuenchedSteel.ROOM_CELSIUS).value()));
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
                                hrc(temper.hrc(s))))
                    .orElseGet(() -> metal(s, Structure.SOFT, Optional.empty())))
        .toList();
  }

  private static Metal metal(SteelNow s, Structure structure, Optional<Double> hrc) {
    return new Metal(s.id(), structure, Optional.empty(), hrc);
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

  private static Optional<Double> onScale(SteelNow s) {
    return s.lines().alwaysAustenite()
        ? Optional.empty()
        : hrc(s.k().hardening().conversion().hrc(s.pearliteVickers()));
  }

  private static Optional<Double> hrc(double hrc) {
    return hrc >= LEAST_HRC ? Optional.of(hrc) : Optional.empty();
  }
}
