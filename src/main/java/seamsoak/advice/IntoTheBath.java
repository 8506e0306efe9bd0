package seamsoak.advice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import seamsoak.advice.ScheduleStep.Becomes;
import seamsoak.billet.Equipment;
import seamsoak.heat.HeatCurve;
import seamsoak.property.Quenchant;
import seamsoak.property.QuenchedSteel;
import seamsoak.steel.Hardenability;
import seamsoak.unit.TimeSpan;

/**
 * Pre-heat, hardening, cold and tempers.
 *
 * @param course the piece
 * @param heat to harden from
 * @param quench chosen for it
 * @param coarse whether the carbides are coarse from an anneal
 */
record IntoTheBath(Course course, HardeningHeat heat, QuenchChoice quench, boolean coarse) {
  private static final double ZERO = ScheduleStep.ZERO_CELSIUS;

  /** Thicker sections are warmed through first, m; judgement. */
  private static final double THICK_METRES = 10e-3;

  private static final double ROOM = QuenchedSteel.ROOM_CELSIUS;
  private static final double DRY_ICE = -75;
  private static final double NITROGEN = -190;

  /** Austenite worth a cold bath; judgement. */
  private static final double MUCH_AUSTENITE = 0.10;

  /** Where a pre-heat is held; empty when none is needed. */
  private Optional<Double> preHeatC() {
    boolean deep =
        heat.windows().stream()
            .map(w -> w.steel().steel().hardenability())
            .anyMatch(h -> h.filter(x -> x.compareTo(Hardenability.DEEP) >= 0).isPresent());
    boolean thick = course.piece().size().thicknessMetres() > THICK_METRES;
    double celsius = AfterForging.changesAt(course.steels());
    return deep || thick ? Optional.of(celsius) : Optional.empty();
  }

  Tempering run(double wantedHrc, double grain, Optional<String> refused) {
    Heats heats = course.heats();
    Optional<Double> pre = preHeatC();
    pre.ifPresent(celsius -> preHeat(heats, celsius));
    harden(heats, pre.orElse(Heats.ROOM_CELSIUS), refused);
    double coldest = cold();
    Tempering tempers = Tempering.of(heat.edge(), heat.celsius(), grain, coldest, wantedHrc);
    temper(tempers);
    return tempers;
  }

  private void preHeat(Heats heats, double celsius) {
    course.carry(
        new ScheduleStep(
            "pre-heat",
            heats.heater(celsius),
            "Hold at " + course.show(celsius) + " until even, then go straight on",
            "a deep-hardening or thick section cracks or warps when its skin runs ahead of its core",
            List.of("the same dull red from edge to spine"),
            heats.upAndHold(celsius, 10),
            AfterForging.open(course),
            Becomes.UNCHANGED,
            Set.of(),
            Optional.empty()),
        List.of());
  }

  private void harden(Heats heats, double fromCelsius, Optional<String> refused) {
    double celsius = heat.celsius();
    Heater in =
        course.billet.equipment().saltTaken() == Equipment.Salt.NEUTRAL
            ? Heater.SALT
            : heats.heater(celsius);
    double minutes = in == Heater.FORGE ? 3 : heat.holdMinutes(coarse);
    double bath = quench.celsius();
    List<Leg> legs =
        List.of(
            heats.rise(fromCelsius, celsius, in),
            heats.hold(celsius, minutes),
            heats.quench(celsius, quench));
    Set<Condition> more = new HashSet<>(conditions(quench.quenchant()));
    List<SteelNow> steels = course.steels();
    ScheduleStep step =
        new ScheduleStep(
            "harden",
            in,
            "Hold at "
                + course.show(celsius)
                + ", then quench in "
                + quench.quenchant().name()
                + " at "
                + course.show(bath),
            why(minutes),
            List.of(
                "the magnet lets go "
                    + magnetBelow(celsius)
                    + " below this heat: it tells when to watch, not when to quench",
                course.color(celsius),
                "at once when it is cold enough to hold: a new file skates along the edge; a soft spot"
                    + " is skin left on, or a slow quench",
                "before the tempers harden a test piece alongside and break it"),
            legs,
            AfterForging.open(course),
            Becomes.QUENCHED,
            more,
            refused);
    course.carry(step, Structures.quenched(steels, quench, ROOM));
  }

  private String why(double minutes) {
    StringBuilder all = new StringBuilder();
    for (HardeningHeat.Window w : heat.windows()) {
      all.append(all.isEmpty() ? "" : ", ")
          .append(w.steel().id())
          .append(w.sheet().isPresent() ? " hardens from " : " hardens, by its carbon, from ")
          .append(course.show(w.lowC()))
          .append(" to ")
          .append(course.show(w.highC()));
    }
    boolean carbide = heat.windows().stream().anyMatch(w -> w.steel().overEutectoid());
    all.append("; ")
        .append(TimeSpan.ofMinutes(minutes).format(course.units))
        .append(
            carbide
                ? " lets enough carbide dissolve and no more"
                : " makes it even and dissolves the carbide of the pearlite");
    for (QuenchChoice.Taken t : quench.steels()) {
      all.append(". ").append(speed(t));
    }
    return all.toString();
  }

  private String speed(QuenchChoice.Taken t) {
    String said =
        String.format(
            Locale.ROOT,
            "The middle of %s has to fall from %s to %s within %s s; in %s it takes about %s s",
            t.steel().id(),
            course.show(800),
            course.show(500),
            seconds(t.result().longestSeconds8to5()),
            quench.quenchant().name(),
            seconds(t.result().coreSeconds8to5()));
    return said
        + switch (t.middle()) {
          case YES -> ", so it hardens through";
          case PERHAPS ->
              ", on the edge of hardening through: handbooks say it does, the estimate that it may"
                  + " not; try a test piece";
          case NO -> ", so its middle will not harden";
        };
  }

  private static String seconds(double s) {
    return String.format(Locale.ROOT, s < 10 ? "%.1f" : "%.0f", s);
  }

  private String magnetBelow(double celsius) {
    double highest =
        heat.windows().stream().mapToDouble(w -> w.steel().magnet().value()).max().orElseThrow();
    return new seamsoak.unit.TemperatureDifference(HardeningHeat.round(celsius - highest))
        .format(course.units);
  }

  /** Conditions that a bath brings about. */
  static Set<Condition> conditions(Quenchant q) {
    return switch (q.kind()) {
      case OIL ->
          q.id().equals("canola")
              ? Set.of(Condition.OIL, Condition.VEGETABLE_OIL)
              : Set.of(Condition.OIL);
      case SALT -> Set.of(Condition.SALT);
      default -> Set.of();
    };
  }

  /** Cools on below room temperature if that pays and can be done; how cold it got. */
  private double cold() {
    Equipment.Cold has = course.billet.equipment().coldTaken();
    double most =
        quench.steels().stream()
            .mapToDouble(t -> t.austenite().retainedShare(ROOM))
            .max()
            .orElse(0);
    if (has == Equipment.Cold.NONE || most < MUCH_AUSTENITE) {
      return ROOM;
    }
    double to = has == Equipment.Cold.DRY_ICE ? DRY_ICE : NITROGEN;
    List<SteelNow> steels = course.steels();
    course.carry(
        new ScheduleStep(
            "sub-zero",
            Heater.BENCH,
            "When it is cold to the hand, cool it on to "
                + course.show(to)
                + " in "
                + (has == Equipment.Cold.DRY_ICE ? "dry ice and alcohol" : "liquid nitrogen")
                + " for an hour, then let it come up by itself",
            String.format(
                Locale.ROOT,
                "takes most of the %.0f %% austenite that the quench leaves; within the hour after"
                    + " it, before the temper",
                100 * most),
            List.of("no pinging; a piece that pings has cracked"),
            List.of(
                new Leg(
                    "cool",
                    new HeatCurve(List.of(new HeatCurve.Segment(ROOM + ZERO, to + ZERO, 3600))),
                    has == Equipment.Cold.DRY_ICE ? "dry ice" : "nitrogen")),
            seamsoak.carbon.Edge.SEALED,
            Becomes.CHILLED,
            Set.of(Condition.SUB_ZERO),
            Optional.empty()),
        Structures.quenched(steels, quench, to));
    return to;
  }

  private void temper(Tempering t) {
    for (int i = 1; i <= Tempering.TIMES; i++) {
      Heats heats = course.heats();
      List<SteelNow> steels = course.steels();
      List<Leg> legs = new ArrayList<>();
      legs.add(heats.rise(Heats.ROOM_CELSIUS, t.celsius()));
      legs.add(heats.hold(t.celsius(), Tempering.HOURS * 60));
      course.carry(
          new ScheduleStep(
              "temper " + i,
              heats.heater(t.celsius()),
              "Hold at " + course.show(t.celsius()) + ", then let it cool to the hand",
              i == 1
                  ? why(t, steels)
                  : "the first temper lets some austenite turn to fresh martensite; this one tempers"
                      + " that too",
              List.of(
                  "a thermometer beside the blade, not the oven's own",
                  i == 1
                      ? "a file begins to bite, barely"
                      : "flex the edge over a brass rod: it springs back, neither chips nor stays"
                          + " bent"),
              legs,
              AfterForging.open(course),
              Becomes.TEMPERED,
              conditions(quench.quenchant()),
              Optional.empty()),
          Structures.tempered(steels, quench, t));
    }
  }

  private String why(Tempering t, List<SteelNow> steels) {
    StringBuilder all = new StringBuilder();
    all.append(
        String.format(
            Locale.ROOT, "for %.0f HRC at the edge: %s", t.wantedHrc(), Tempering.times()));
    for (SteelNow s : steels) {
      all.append(
          s.hardens()
              ? String.format(
                  Locale.ROOT,
                  ", %s comes from %.0f to about %.0f HRC",
                  s.id(),
                  t.quenchedHrc(s),
                  t.hrc(s))
              : ", " + s.id() + " stays soft");
    }
    return all.append("; give or take 2").toString();
  }
}
