package seamsoak.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.advice.ScheduleAdvice.Conflict;
import seamsoak.steel.Dispute;
import seamsoak.steel.HeatTreatment;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.UnitSystem;

/**
 * What the steels of a billet, or their sheets, do not agree on, each with what to do about it.
 *
 * @param course the piece
 * @param guard how it has to be cooled after forging
 */
record Conflicts(Course course, Guard guard) {
  /** Tempered hardnesses further apart than this are worth a word, HRC; judgement. */
  private static final double HRC_APART = 4;

  /** Ideal diameters further apart than this ask for different baths; judgement. */
  private static final double MUCH_DEEPER = 2.5;

  /** Those that are known before the blade is ground. */
  List<Conflict> ofBillet() {
    List<SteelNow> steels = course.steels();
    List<Conflict> all = new ArrayList<>();
    for (SteelNow s : steels) {
      for (Dispute d : s.steel().disputes()) {
        all.add(dispute(s, d));
      }
    }
    airAndSoft(steels).ifPresent(all::add);
    if (guard.slow() && !course.billet.equipment().kilnTaken().there()) {
      all.add(
          new Conflict(
              "no kiln",
              names(steels),
              "a steel of it hardens in air, and neither ash nor vermiculite is slow enough: L6 left"
                  + " in ash was found hard throughout",
              "have it annealed by someone with a kiln, or take steels that do not harden in air"));
    }
    for (SteelNow s : steels) {
      if (s.hardens() && s.beyondFormulas()) {
        all.add(beyond(s));
      }
    }
    if (steels.stream().noneMatch(SteelNow::hardens)) {
      all.add(
          new Conflict(
              "nothing hardens",
              names(steels),
              "no steel of it has the carbon to harden",
              "the schedule ends with the cycles; for a blade put a high-carbon steel at the edge"));
    }
    return all;
  }

  private static Conflict dispute(SteelNow s, Dispute d) {
    return d.never()
        ? new Conflict(
            d.matter(),
            List.of(s.id()),
            s.id() + " must not be normalized: its sheets say to " + d.one(),
            "this schedule anneals it instead and leaves the cycles out; follow its own sheet for"
                + " the hardening")
        : new Conflict(
            d.matter(),
            List.of(s.id()),
            "the sheets of " + s.id() + " disagree: " + d.one() + ", or " + d.other(),
            d.matter().equals(Dispute.NORMALIZING)
                ? "this schedule takes the careful side: no cooling in air from above the critical"
                    + " range, kiln-cooled cycles and a full anneal; a sheet from whoever sold the"
                    + " bar comes before it"
                : "keep to where they agree, or to the cooler one");
  }

  private Conflict beyond(SteelNow s) {
    HeatTreatment sheet = s.steel().heatTreatment();
    return new Conflict(
        "beyond the formulas",
        List.of(s.id()),
        "no formula here reaches as much alloy as "
            + s.id()
            + " has, so its hardening and tempers are not worked out",
        "go by its own sheet"
            + sheet.harden().map(r -> ": harden from " + between(r)).orElse("")
            + sheet.temper().map(r -> ", temper at " + between(r)).orElse("")
            + "; at the heat of any carbon steel it stays soft");
  }

  private String between(TemperatureRange r) {
    return course.between(r.lowC(), r.highC());
  }

  private Optional<Conflict> airAndSoft(List<SteelNow> steels) {
    List<String> hard = new ArrayList<>();
    List<String> soft = new ArrayList<>();
    for (SteelNow s : steels) {
      boolean air =
          s.inAir(course.heats().section(), Cycles.normalizeCelsius(steels), course.grainNumber())
              != SteelNow.InAir.NO;
      (air ? hard : soft).add(s.id());
    }
    return hard.isEmpty() || soft.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Conflict(
                "cooling in air",
                names(steels),
                String.join(", ", hard)
                    + " may harden in still air in this section, at least in part, while "
                    + String.join(", ", soft)
                    + " stays soft: it swells as the other does not, and the welds are sheared",
                "cool it as slowly as the schedule says each time, and never lay it hard overnight"));
  }

  /** Those of the hardening and the tempers. */
  List<Conflict> ofBlade(
      HardeningHeat heat, Optional<QuenchChoice> quench, Optional<Tempering> temper) {
    List<SteelNow> steels = course.steels();
    List<Conflict> all = new ArrayList<>();
    windows(heat).ifPresent(all::add);
    outsideSheets(heat).forEach(all::add);
    for (SteelNow s : steels) {
      if (!s.hardens()) {
        all.add(
            new Conflict(
                "soft layer",
                List.of(s.id()),
                s.lines().alwaysAustenite()
                    ? s.id() + " does not harden at any heat"
                    : String.format(
                        java.util.Locale.ROOT,
                        "%s will not harden: it has %.2f %% carbon by then",
                        s.id(),
                        s.carbonPct()),
                "keep it away from the edge: grind so that "
                    + heat.edge().id()
                    + " is what cuts, and test with a file there"));
      }
    }
    quench.ifPresent(q -> all.addAll(ofQuench(q)));
    temper.ifPresent(t -> all.addAll(ofTemper(heat, t)));
    return all;
  }

  private Optional<Conflict> windows(HardeningHeat heat) {
    if (heat.agrees()) {
      return Optional.empty();
    }
    UnitSystem units = course.units;
    return Optional.of(
        new Conflict(
            "hardening heat",
            heat.windows().stream().map(w -> w.steel().id()).toList(),
            "no heat suits them all: "
                + heat.windows().stream()
                    .map(
                        w ->
                            w.steel().id()
                                + " "
                                + seamsoak.unit.Temperature.ofCelsius(w.lowC()).format(units)
                                + " to "
                                + seamsoak.unit.Temperature.ofCelsius(w.highC()).format(units))
                    .collect(Collectors.joining(", ")),
            course.show(heat.celsius())
                + " is right for "
                + heat.edge().id()
                + " at the edge, as near the others as it allows; harden and break a test piece, and"
                + " next time pair steels that share a range"));
  }

  /** A heat outside a published range, though the window that carbon asks for holds it. */
  private List<Conflict> outsideSheets(HardeningHeat heat) {
    if (!heat.agrees()) {
      return List.of();
    }
    return heat.windows().stream()
        .filter(
            w ->
                w.sheet()
                    .filter(r -> heat.celsius() < r.lowC() - 3 || heat.celsius() > r.highC() + 3)
                    .isPresent())
        .map(
            w ->
                new Conflict(
                    "hardening heat",
                    List.of(w.steel().id()),
                    course.show(heat.celsius())
                        + " lies outside the published range of "
                        + w.steel().id(),
                    "its carbon has moved since, and with it the heat it needs; try a test piece"))
        .toList();
  }

  private List<Conflict> ofQuench(QuenchChoice q) {
    List<Conflict> all = new ArrayList<>();
    for (QuenchChoice.Taken t : q.steels()) {
      if (t.middle() == QuenchChoice.Middle.NO) {
        all.add(
            new Conflict(
                "quench speed",
                List.of(t.steel().id()),
                String.format(
                    java.util.Locale.ROOT,
                    "the middle of %s will not harden in this section: it has to fall from 800 to"
                        + " 500 C (1470 to 930 F) within %.1f s and takes about %.0f s in %s",
                    t.steel().id(),
                    t.result().longestSeconds8to5(),
                    t.result().coreSeconds8to5(),
                    q.quenchant().name()),
                remedy(t)));
      }
    }
    List<QuenchChoice.Taken> deepest =
        q.steels().stream()
            .sorted(java.util.Comparator.comparingDouble(t -> t.austenite().idealDiameterMetres()))
            .toList();
    QuenchChoice.Taken shallow = deepest.get(0);
    QuenchChoice.Taken deep = deepest.get(deepest.size() - 1);
    if (deep.austenite().idealDiameterMetres()
            > MUCH_DEEPER * shallow.austenite().idealDiameterMetres()
        && q.quenchant().kind() == seamsoak.property.Quenchant.Kind.WATER) {
      all.add(
          new Conflict(
              "quench speed",
              List.of(shallow.steel().id(), deep.steel().id()),
              shallow.steel().id()
                  + " needs a bath so fast that "
                  + deep.steel().id()
                  + ", which hardens far more deeply, may crack in it",
              "make the blade thinner and quench in fast oil, or pair steels of like depth"));
    }
    return all;
  }

  private String remedy(QuenchChoice.Taken t) {
    double oil = thickest(t, "oil-fast");
    double brine = thickest(t, "brine");
    return "it hardens through where the blade is no thicker than about "
        + new seamsoak.unit.Length(oil).format(course.units)
        + " in fast oil and "
        + new seamsoak.unit.Length(brine).format(course.units)
        + " in brine"
        + t.steel().steel().heatTreatment().quench().map(q -> " (its sheet: " + q + ")").orElse("")
        + ", so a thin edge may be hard though the spine is not; make it thinner, or be content with"
        + " a hard skin over a tough middle, which serves a hammer or an ax";
  }

  private static double thickest(QuenchChoice.Taken t, String id) {
    return t.thickestMetres(t.steel().k().hardening().quenchants().find(id).orElseThrow());
  }

  private List<Conflict> ofTemper(HardeningHeat heat, Tempering t) {
    List<Conflict> all = new ArrayList<>();
    if (t.misses(heat.edge())) {
      all.add(
          new Conflict(
              "hardness",
              List.of(heat.edge().id()),
              String.format(
                  java.util.Locale.ROOT,
                  "%.0f HRC at the edge cannot be had within the tempers its sheet allows: it comes"
                      + " to about %.0f",
                  t.wantedHrc(),
                  t.hrc(heat.edge())),
              t.hrc(heat.edge()) < t.wantedHrc()
                  ? "be content with that, or put a steel with more carbon at the edge"
                  : "temper hotter in small steps on a test piece, watching what its sheet says of"
                      + " brittleness"));
    }
    for (HardeningHeat.Window w : heat.windows()) {
      double hrc = t.hrc(w.steel());
      if (Math.abs(hrc - t.hrc(heat.edge())) > HRC_APART) {
        all.add(
            new Conflict(
                "temper",
                List.of(heat.edge().id(), w.steel().id()),
                String.format(
                    java.util.Locale.ROOT,
                    "the same temper leaves %s at about %.0f HRC and %s at about %.0f",
                    heat.edge().id(),
                    t.hrc(heat.edge()),
                    w.steel().id(),
                    hrc),
                "the edge decides; where both lie in the edge it wears unevenly, which some want"));
      }
    }
    return all;
  }

  private static List<String> names(List<SteelNow> steels) {
    return steels.stream().map(SteelNow::id).toList();
  }
}
