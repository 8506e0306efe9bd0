package seamsoak.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.advice.ScheduleAdvice.Conflict;
import seamsoak.billet.Step;
import seamsoak.property.Quenchant;
import seamsoak.steel.Dispute;
import seamsoak.steel.HeatTreatment;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Length;

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

  /**
   * With more layers than these an edge shows all of them: a core between two jackets has three.
   */
  private static final int FEW_LAYERS = 5;

  /** Those that are known before the blade is ground. */
  List<Conflict> ofBillet() {
    List<SteelNow> steels = course.steels();
    List<Conflict> all = new ArrayList<>();
    for (SteelNow s : steels) {
      for (Dispute d : s.steel().disputes()) {
        all.add(dispute(s, d));
      }
    }
    course
        .piece()
        .jacket()
        .filter(j -> BenchWork.jacketed(course.piece()))
        .map(j -> jacket(j.name()))
        .ifPresent(all::add);
    airAndSoft(steels).ifPresent(all::add);
    if (guard.way() != Guard.Way.AIR && !course.heats().kiln()) {
      all.add(
          new Conflict(
              "no kiln",
              names(steels),
              "a steel of it "
                  + (guard.slow() ? "hardens" : "may harden in part")
                  + " in air, and neither ash nor vermiculite is sure to be slow enough: L6 left in"
                  + " ash was found hard throughout",
              "have it annealed by someone with a kiln, or take steels that do not harden in air; the"
                  + " best that a fire can do is in the schedule"));
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

  private static Conflict jacket(String steel) {
    return new Conflict(
        "jacket",
        List.of(steel),
        "the jacket of " + steel + " is still on the billet, and it makes no edge",
        "take it off before anything is hardened; this schedule keeps it on through the fires, which"
            + " saves the body from scale but not from losing carbon to the sheet, and grinds it off"
            + " with the skin below it");
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
            "the sheets of " + s.id() + " disagree: " + d.one() + "; or " + d.other(),
            d.matter().equals(Dispute.NORMALIZING)
                ? "this schedule takes the careful side: no cooling in air from above the critical"
                    + " range, kiln-cooled cycles and a full anneal; a sheet from whoever sold the"
                    + " bar comes before it"
                : "keep to where they agree, or to the cooler one");
  }

  private Conflict beyond(SteelNow s) {
    HeatTreatment sheet = s.steel().heatTreatment();
    Optional<HardeningHeat> other = HardeningHeat.of(course.steels(), Optional.empty());
    String apart =
        other
            .filter(h -> sheet.harden().filter(r -> r.lowC() > h.celsius()).isPresent())
            .map(
                h ->
                    "no heat suits them all: "
                        + s.id()
                        + " hardens from "
                        + sheet.harden().map(this::between).orElse("")
                        + ", "
                        + windows(h.windows())
                        + "; and ")
            .orElse("");
    return new Conflict(
        "beyond the formulas",
        List.of(s.id()),
        apart
            + "no formula here reaches as much alloy as "
            + s.id()
            + " has, so its hardening and tempers are not worked out",
        (other.isPresent()
                ? "this schedule is for the others, and leaves "
                    + s.id()
                    + " soft; if that is what has to cut, go by its own sheet"
                : "go by its own sheet")
            + sheet.harden().map(r -> ": harden from " + between(r)).orElse("")
            + sheet.quench().map(q -> " in " + q).orElse("")
            + sheet.temper().map(r -> ", temper at " + between(r)).orElse("")
            + other
                .map(
                    h ->
                        ", which coarsens "
                            + String.join(
                                ", ", h.windows().stream().map(w -> w.steel().id()).toList()))
                .orElse(""));
  }

  private String windows(List<HardeningHeat.Window> windows) {
    return windows.stream()
        .map(w -> w.steel().id() + " from " + course.between(w.lowC(), w.highC()))
        .collect(Collectors.joining(", "));
  }

  private String between(TemperatureRange r) {
    return course.between(r.lowC(), r.highC());
  }

  private Optional<Conflict> airAndSoft(List<SteelNow> steels) {
    List<String> hard = new ArrayList<>();
    List<String> soft = new ArrayList<>();
    boolean all = true;
    double celsius = Cycles.normalizeCelsius(steels);
    for (SteelNow s : steels) {
      SteelNow.InAir air = s.inAir(course.heats().section(), celsius, course.grainNumber());
      (air == SteelNow.InAir.NO ? soft : hard).add(s.id());
      all &= air != SteelNow.InAir.PERHAPS;
    }
    return hard.isEmpty() || soft.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Conflict(
                "cooling in air",
                names(steels),
                String.join(", ", hard)
                    + (all
                        ? hard.size() > 1 ? " harden" : " hardens"
                        : " may harden, at least in part,")
                    + " in still air in this section, while "
                    + String.join(", ", soft)
                    + " stays soft: it swells as the other does not, and the welds are sheared",
                "cool it as slowly as the schedule says each time, and never lay it hard overnight"));
  }

  /** Those of the hardening and the tempers. */
  List<Conflict> ofBlade(HardeningHeat heat, QuenchChoice quench, Tempering temper) {
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
                soft(s),
                inTheEdge()
                    ? "in so many layers it lies in the edge too, stays soft there and wears first;"
                        + " where the edge must be hard, lay a core of "
                        + heat.edge().id()
                        + " through it, or put a steel with more carbon in its place"
                    : "keep it away from the edge: grind so that "
                        + heat.edge().id()
                        + " is what cuts, and test with a file there"));
      }
    }
    all.addAll(ofQuench(quench));
    all.addAll(ofTemper(heat, temper));
    return all;
  }

  private String soft(SteelNow s) {
    if (s.lines().alwaysAustenite()) {
      return s.id() + " does not harden at any heat";
    }
    return String.format(
        Locale.ROOT,
        "%s will not harden%s: it has %.2f %% carbon by then",
        s.id(),
        s.steel()
            .heatTreatment()
            .harden()
            .filter(r -> s.ownHeat())
            .map(r -> " below the heat of its own sheet, " + between(r))
            .orElse(""),
        s.carbonPct());
  }

  /** Whether the layers are so many that an edge ground through them holds all of them. */
  private boolean inTheEdge() {
    return course.billet.stack().layers() > FEW_LAYERS
        || course.billet.steps().stream()
            .anyMatch(s -> s instanceof Step.Restack || s instanceof Step.Tile);
  }

  private Optional<Conflict> windows(HardeningHeat heat) {
    if (heat.agrees()) {
      return Optional.empty();
    }
    return Optional.of(
        new Conflict(
            "hardening heat",
            heat.windows().stream().map(w -> w.steel().id()).toList(),
            "no heat suits them all: " + windows(heat.windows()),
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
                    .filter(
                        r ->
                            heat.celsius() < r.lowC() - HardeningHeat.NEAR
                                || heat.celsius() > r.highC() + HardeningHeat.NEAR)
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
                    Locale.ROOT,
                    "the middle of %s will not harden in this section: it has to fall from %s to %s"
                        + " within %.1f s and takes about %.0f s in %s",
                    t.steel().id(),
                    course.show(800),
                    course.show(500),
                    t.allowsSeconds(),
                    t.result().coreSeconds8to5(),
                    q.quenchant().name()),
                remedy(t)));
      }
    }
    List<QuenchChoice.Taken> deepest =
        q.steels().stream()
            .sorted(Comparator.comparingDouble(t -> t.austenite().idealDiameterMetres()))
            .toList();
    QuenchChoice.Taken shallow = deepest.get(0);
    QuenchChoice.Taken deep = deepest.get(deepest.size() - 1);
    if (deep.austenite().idealDiameterMetres()
            > MUCH_DEEPER * shallow.austenite().idealDiameterMetres()
        && q.quenchant().kind() == Quenchant.Kind.WATER) {
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
        + new Length(oil).format(course.units)
        + " in fast oil and "
        + new Length(brine).format(course.units)
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
    double edge = t.hrc(heat.edge());
    if (Math.abs(edge - t.wantedHrc()) > 1) {
      all.add(
          new Conflict(
              "hardness",
              List.of(heat.edge().id()),
              String.format(
                  Locale.ROOT,
                  "%.0f HRC at the edge cannot be had within the tempers its sheet allows: it comes"
                      + " to about %.0f",
                  t.wantedHrc(),
                  edge),
              edge < t.wantedHrc()
                  ? "be content with that, or put a steel with more carbon at the edge"
                  : "temper hotter in small steps on a test piece, watching what its sheet says of"
                      + " brittleness"));
    }
    for (HardeningHeat.Window w : heat.windows()) {
      double hrc = t.hrc(w.steel());
      if (Math.abs(hrc - edge) > HRC_APART) {
        all.add(
            new Conflict(
                "temper",
                List.of(heat.edge().id(), w.steel().id()),
                String.format(
                    Locale.ROOT,
                    "the same temper leaves %s at about %.0f HRC and %s at about %.0f",
                    heat.edge().id(),
                    edge,
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
