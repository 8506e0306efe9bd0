package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import seamsoak.property.QuenchedSteel;
import seamsoak.schedule.ScheduleAdvice.Metal;

/** What each steel consists of after a step, and how hard it is. */
final class Structures {
  private static final double LEAST_HRC = 20;
  private static final double PEARLITE_ONLY = 0.65;

  private Structures() {}

  /** Cooled from above the critical range under a guard. */
  static List<Metal> cooled(
      List<SteelNow> steels, Heats heats, double celsius, double grainNumber, boolean slowly) {
    List<Metal> all = new ArrayList<>();
    for (SteelNow s : steels) {
      Hardens air = slowly ? Hardens.NO : s.inAir(heats.section(), celsius, grainNumber);
      all.add(
          switch (air) {
            case YES ->
                new Metal(
                    s.id(),
                    "martensite, hard",
                    s.beyondFormulas()
                        ? Optional.empty()
                        : hrc(
                            s.quenched(celsius, grainNumber)
                                .fullHrc(QuenchedSteel.ROOM_CELSIUS)
                                .value()));
            case PERHAPS ->
                new Metal(s.id(), "pearlite, perhaps with martensite", Optional.empty());
            case NO ->
                slowly
                    ? new Metal(s.id(), annealed(s), Optional.empty())
                    : new Metal(s.id(), pearlite(s), onScale(s));
          });
    }
    return all;
  }

  /** Annealed or held below the critical range. */
  static List<Metal> softened(List<SteelNow> steels) {
    return steels.stream().map(s -> new Metal(s.id(), annealed(s), Optional.empty())).toList();
  }

  /** Straight from the quench. */
  static List<Metal> quenched(List<SteelNow> steels, QuenchChoice quench, double coldestCelsius) {
    List<Metal> all = new ArrayList<>();
    for (SteelNow s : steels) {
      Optional<QuenchChoice.Taken> taken = quench.of(s);
      if (taken.isEmpty()) {
        all.add(
            new Metal(
                s.id(),
                s.ownHeat() ? "does not harden from this heat" : "does not harden",
                Optional.empty()));
        continue;
      }
      String hard =
          String.format(
              Locale.ROOT,
              "martensite, %.0f %% austenite",
              100 * taken.get().austenite().retainedShare(coldestCelsius));
      all.add(
          new Metal(
              s.id(),
              switch (taken.get().middle()) {
                case YES -> hard;
                case PERHAPS -> hard + ", the middle perhaps softer";
                case NO -> hard + " at the face, the middle soft";
              },
              hrc(
                  taken.get().result().faceHrc().value()
                      + taken.get().austenite().fullHrc(coldestCelsius).value()
                      - taken.get().austenite().fullHrc(QuenchedSteel.ROOM_CELSIUS).value())));
    }
    return all;
  }

  /** After the tempers. */
  static List<Metal> tempered(List<SteelNow> steels, QuenchChoice quench, Tempering temper) {
    List<Metal> all = new ArrayList<>();
    for (SteelNow s : steels) {
      Optional<QuenchChoice.Taken> taken = quench.of(s);
      all.add(
          taken.isEmpty()
              ? new Metal(s.id(), "soft", Optional.empty())
              : new Metal(
                  s.id(),
                  taken.get().middle() == Hardens.NO
                      ? "tempered martensite at the face"
                      : "tempered martensite",
                  hrc(temper.hrc(s))));
    }
    return all;
  }

  private static String pearlite(SteelNow s) {
    if (s.lines().alwaysAustenite()) {
      return "no change";
    }
    if (s.carbonPct() < PEARLITE_ONLY) {
      return s.carbonPct() < 0.02 ? "ferrite" : "ferrite and pearlite";
    }
    return s.overEutectoid() ? "fine pearlite and carbide" : "fine pearlite";
  }

  private static String annealed(SteelNow s) {
    if (s.lines().alwaysAustenite()) {
      return "no change";
    }
    return s.carbonPct() < 0.02 ? "ferrite" : "soft: carbide in ferrite";
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
