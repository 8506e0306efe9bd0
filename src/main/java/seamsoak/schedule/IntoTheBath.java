package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import seamsoak.billet.Equipment;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.Quenchant;
import seamsoak.safety.Condition;
import seamsoak.safety.Stop;
import seamsoak.steel.Hardenability;
import seamsoak.unit.TimeSpan;

/**
 * Pre-heat and hardening, and with what follows at once, cold and tempers, the whole of it.
 *
 * @param course the piece
 * @param heat to harden from
 * @param quench chosen for it
 * @param coarse whether the carbides are coarse from an anneal
 */
record IntoTheBath(Course course, HardeningHeat heat, QuenchChoice quench, boolean coarse) {
  /** Thicker sections are warmed through first, m; judgement. */
  private static final double THICK_METRES = 10e-3;

  /** Longer than this a forge holds no heat, min; judgement. */
  private static final double FORGE_MINUTES = 3;

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

  Tempering run(double wantedHrc, double grain, Optional<Stop> refused) {
    Heats heats = course.heats();
    Optional<Double> pre = preHeatC();
    pre.ifPresent(celsius -> preHeat(heats, celsius));
    harden(heats, pre.orElse(Heats.ROOM_CELSIUS), refused);
    AfterTheBath after = new AfterTheBath(course, quench);
    double coldest = after.cold();
    Tempering tempers =
        Tempering.of(heat.edge(), quench, heat.celsius(), grain, coldest, wantedHrc);
    after.temper(tempers);
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
            Set.of(),
            Optional.empty()),
        List.of());
  }

  private void harden(Heats heats, double fromCelsius, Optional<Stop> refused) {
    double celsius = heat.celsius();
    Heater in =
        course.billet.equipment().saltTaken() == Equipment.Salt.NEUTRAL
            ? Heater.SALT
            : heats.heater(celsius);
    double wanted = heat.holdMinutes(coarse);
    double minutes = in == Heater.FORGE ? FORGE_MINUTES : wanted;
    double bath = quench.celsius();
    List<Leg> legs =
        List.of(
            heats.rise(fromCelsius, celsius, in),
            heats.hold(celsius, minutes),
            heats.quench(celsius, quench));
    Set<Condition> more = Condition.ofBath(quench.quenchant());
    List<SteelNow> steels = course.steels();
    ScheduleStep step =
        new ScheduleStep(
            "harden",
            in,
            "Hold at "
                + course.show(celsius)
                + ", then quench in "
                + quench.quenchant().name()
                + (quench.quenchant().kind() == Quenchant.Kind.AIR
                    ? ""
                    : " at " + course.show(bath))
                + afterwards(),
            why(minutes, wanted),
            checks(celsius),
            legs,
            AfterForging.open(course),
            more,
            refused);
    course.carry(step, Structures.quenched(steels, quench, QuenchedSteel.ROOM_CELSIUS));
  }

  /** What follows the quench itself; in a hot bath the steel is still soft. */
  private String afterwards() {
    return switch (quench.quenchant().kind()) {
      case SALT ->
          "; take it out as soon as it is even and let it cool in still air: only then does it"
              + " harden";
      case PLATES -> ", closed on both faces, until a hand can bear it";
      default -> "";
    };
  }

  private List<String> checks(double celsius) {
    List<String> all = new ArrayList<>();
    all.add(
        "the last of the magnet's pull goes about "
            + magnetBelow(celsius)
            + " below this heat: it tells when to watch, not when to quench");
    all.add(course.color(celsius));
    if (quench.quenchant().kind() == Quenchant.Kind.WATER) {
      all.add(
          "water and brine crack blades: no sharp inside corner, no scratch across the edge, edge not"
              + " thin yet");
    }
    all.add(
        "as soon as it can be held: a new file skates along the edge and a scriber leaves no scratch; a"
            + " soft spot is skin left on, or a slow quench");
    all.add("a test piece hardened alongside, broken before the tempers: gray silk");
    return all;
  }

  private String why(double minutes, double wanted) {
    StringBuilder all = new StringBuilder();
    for (HardeningHeat.Window w : heat.windows()) {
      all.append(all.isEmpty() ? "" : ", ")
          .append(w.steel().id())
          .append(w.sheet().isPresent() ? " hardens from " : " hardens, by its carbon, from ")
          .append(course.show(w.range().lowC()))
          .append(" to ")
          .append(course.show(w.range().highC()));
    }
    boolean carbide = heat.windows().stream().anyMatch(w -> w.steel().overEutectoid());
    all.append("; ")
        .append(TimeSpan.ofMinutes(minutes).format(course.units))
        .append(
            carbide
                ? " lets enough carbide dissolve and no more"
                : " makes it even and dissolves the carbide of the pearlite");
    if (minutes < wanted - 0.5) {
      all.append(
          ", though "
              + TimeSpan.ofMinutes(wanted).format(course.units)
              + " in a kiln would do it better: in a forge the skin runs ahead the longer it stays");
    }
    all.append(". To harden, the middle has to fall from ")
        .append(course.show(800))
        .append(" to ")
        .append(course.show(500))
        .append(
            String.format(
                Locale.ROOT,
                "; %s does it in about %s s",
                quench.quenchant().name(),
                seconds(quench.steels().get(0).result().coreSeconds8to5())));
    for (QuenchChoice.Taken t : quench.steels()) {
      all.append(". ").append(speed(t));
    }
    return all.toString();
  }

  private static String speed(QuenchChoice.Taken t) {
    double face = t.result().faceHrc().value();
    double core = t.result().coreHrc().value();
    return t.steel().id()
        + " allows "
        + seconds(t.allowsSeconds())
        + " s: "
        + switch (t.middle()) {
          case YES -> String.format(Locale.ROOT, "hard throughout, about %.0f HRC", core);
          case PERHAPS ->
              String.format(
                  Locale.ROOT,
                  "nearly throughout, about %.0f HRC at the face and %.0f HRC in the middle; the edge,"
                      + " being thinner, is harder. Try a test piece",
                  face,
                  core);
          case NO ->
              String.format(
                  Locale.ROOT,
                  "its middle will not harden, about %.0f HRC at the face and %.0f HRC in the middle",
                  face,
                  core);
        };
  }

  private static String seconds(double s) {
    return String.format(Locale.ROOT, s < 10 ? "%.1f" : "%.0f", s);
  }

  private String magnetBelow(double celsius) {
    double highest =
        heat.windows().stream().mapToDouble(w -> w.steel().magnet().high()).max().orElseThrow();
    return course.apart(celsius - highest);
  }
}
