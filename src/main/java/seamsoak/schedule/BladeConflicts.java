package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.billet.Step;
import seamsoak.property.hardening.Quenchant;
import seamsoak.schedule.ScheduleAdvice.Conflict;
import seamsoak.unit.Length;

/**
 * What the steels of a blade do not agree on when it is hardened and tempered, each with what to do
 * about it.
 *
 * @param course the piece
 * @param heat the hardening heat
 * @param quench the bath and what it does
 * @param temper the tempers
 */
record BladeConflicts(Course course, HardeningHeat heat, QuenchChoice quench, Tempering temper) {
  /** Tempered hardnesses further apart than this are worth a word, HRC; judgement. */
  private static final double HRC_APART = 4;

  /** Ideal diameters further apart than this ask for different baths; judgement. */
  private static final double MUCH_DEEPER = 2.5;

  /**
   * With more layers than these an edge shows all of them: a core between two jackets has three.
   */
  private static final int FEW_LAYERS = 5;

  List<Conflict> all() {
    List<SteelNow> steels = course.steels();
    List<Conflict> all = new ArrayList<>();
    noCommonHeat().ifPresent(all::add);
    outsideSheets().forEach(all::add);
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
    all.addAll(ofQuench());
    all.addAll(ofTemper());
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
            .map(r -> " below the heat of its own sheet, " + course.between(r))
            .orElse(""),
        s.carbonPct());
  }

  /** Whether the layers are so many that an edge ground through them holds all of them. */
  private boolean inTheEdge() {
    return course.billet().stack().layers() > FEW_LAYERS
        || course.billet().steps().stream()
            .anyMatch(s -> s instanceof Step.Restack || s instanceof Step.Tile);
  }

  private Optional<Conflict> noCommonHeat() {
    if (heat.agrees()) {
      return Optional.empty();
    }
    return Optional.of(
        new Conflict(
            "hardening heat",
            heat.windows().stream().map(w -> w.steel().id()).toList(),
            "no heat suits them all: " + windows(course, heat.windows()),
            course.show(heat.celsius())
                + " is right for "
                + heat.edge().id()
                + " at the edge, as near the others as it allows; harden and break a test piece, and"
                + " next time pair steels that share a range"));
  }

  /** A heat outside a published range, though the window that carbon asks for holds it. */
  private List<Conflict> outsideSheets() {
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

  private List<Conflict> ofQuench() {
    List<Conflict> all = new ArrayList<>();
    for (QuenchChoice.Taken t : quench.steels()) {
      if (t.middle() == Hardens.NO) {
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
                    quench.quenchant().name()),
                remedy(t)));
      }
    }
    List<QuenchChoice.Taken> deepest =
        quench.steels().stream()
            .sorted(Comparator.comparingDouble(t -> t.austenite().idealDiameterMetres()))
            .toList();
    QuenchChoice.Taken shallow = deepest.get(0);
    QuenchChoice.Taken deep = deepest.get(deepest.size() - 1);
    if (deep.austenite().idealDiameterMetres()
            > MUCH_DEEPER * shallow.austenite().idealDiameterMetres()
        && quench.quenchant().kind() == Quenchant.Kind.WATER) {
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
        + new Length(oil).format(course.units())
        + " in fast oil and "
        + new Length(brine).format(course.units())
        + " in brine"
        + t.steel().steel().heatTreatment().quench().map(q -> " (its sheet: " + q + ")").orElse("")
        + ", so a thin edge may be hard though the spine is not; make it thinner, or be content with"
        + " a hard skin over a tough middle, which serves a hammer or an ax";
  }

  private static double thickest(QuenchChoice.Taken t, String id) {
    return t.thickestMetres(t.steel().k().hardening().quenchants().find(id).orElseThrow());
  }

  private List<Conflict> ofTemper() {
    List<Conflict> all = new ArrayList<>();
    double edge = temper.hrc(heat.edge());
    if (Math.abs(edge - temper.wantedHrc()) > 1) {
      all.add(
          new Conflict(
              "hardness",
              List.of(heat.edge().id()),
              String.format(
                  Locale.ROOT,
                  "%.0f HRC at the edge cannot be had within the tempers its sheet allows: it comes"
                      + " to about %.0f",
                  temper.wantedHrc(),
                  edge),
              edge < temper.wantedHrc()
                  ? "be content with that, or put a steel with more carbon at the edge"
                  : "temper hotter in small steps on a test piece, watching what its sheet says of"
                      + " brittleness"));
    }
    for (HardeningHeat.Window w : heat.windows()) {
      double hrc = temper.hrc(w.steel());
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

  /** From where to where each steel hardens, in words. */
  static String windows(Course course, List<HardeningHeat.Window> windows) {
    return windows.stream()
        .map(w -> w.steel().id() + " from " + course.between(w.lowC(), w.highC()))
        .collect(Collectors.joining(", "));
  }
}
