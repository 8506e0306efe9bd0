package seamsoak.schedule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import seamsoak.carbon.Edge;
import seamsoak.heat.HeatCurve;
import seamsoak.safety.Condition;
import seamsoak.source.Caution;

/**
 * One step of a schedule as planned.
 *
 * @param name such as {@code refine 1}
 * @param in where it is done
 * @param doing what to do, as an order
 * @param why the reason for it
 * @param checks what to look for
 * @param legs its parts in the fire and after it; none at the bench
 * @param outside edge of the outer faces in the fire
 * @param more conditions for cautions beside those of the shop
 * @param refused why it must not be done as planned, if so
 */
public record ScheduleStep(
    String name,
    Heater in,
    String doing,
    String why,
    List<String> checks,
    List<Leg> legs,
    Edge outside,
    Set<Condition> more,
    Optional<String> refused) {
  public static final double ROOM_KELVIN = 293.15;
  static final double ZERO_CELSIUS = 273.15;

  public ScheduleStep {
    checks = List.copyOf(checks);
    legs = List.copyOf(legs);
    more = Set.copyOf(more);
  }

  /** The whole of it. */
  HeatCurve curve() {
    return Leg.curve(legs);
  }

  /** Its curve as a chart draws it; where a face is not told apart it follows the core. */
  ScheduleAdvice.Curve told() {
    List<ScheduleAdvice.Corner> core = new ArrayList<>();
    List<ScheduleAdvice.Corner> face = new ArrayList<>();
    double minutes = 0;
    for (Leg leg : legs) {
      add(core, minutes, leg.core());
      add(face, minutes, leg.face().isEmpty() ? leg.core() : leg.face());
      minutes += leg.minutes();
    }
    return new ScheduleAdvice.Curve(name, core, face);
  }

  private static void add(
      List<ScheduleAdvice.Corner> to, double from, List<ScheduleAdvice.Corner> corners) {
    corners.forEach(c -> to.add(new ScheduleAdvice.Corner(from + c.minutes(), c.celsius())));
  }

  /** Its hold, if it has one. */
  Optional<Leg> hold() {
    return legs.stream().filter(l -> l.kind().equals("hold")).findFirst();
  }

  double hottestC() {
    return legs.isEmpty() ? 0 : curve().peakKelvin() - ZERO_CELSIUS;
  }

  /**
   * What holds at it.
   *
   * @param fire what the forge brings along
   * @param on what the piece is wrapped in brings along
   */
  Set<Condition> conditions(Set<Condition> fire, Set<Condition> on) {
    Set<Condition> all = new HashSet<>(more);
    all.addAll(on);
    switch (in) {
      case KILN -> all.add(Condition.KILN);
      case FORGE -> all.addAll(fire);
      case SALT -> all.add(Condition.SALT);
      case OVEN, BENCH -> {}
    }
    return all;
  }

  /** The step that cautions know it by. */
  String cautionStep() {
    return switch (name.split(" ")[0]) {
      case "cool-down", "sub-zero" -> "cool";
      case "stress" -> "anneal";
      case "pre-heat" -> "harden";
      case "test" -> "etch";
      default -> name.split(" ")[0];
    };
  }

  /** Its parts as the answer shows them; reason and check stand at the hold, cautions once. */
  List<ScheduleAdvice.Segment> segments(List<Caution> cautions) {
    List<ScheduleAdvice.Segment> all = new ArrayList<>();
    boolean told = false;
    boolean holds = hold().isPresent();
    for (Leg leg : legs) {
      boolean main = !told && (!holds || leg.kind().equals("hold"));
      told |= main;
      all.add(
          new ScheduleAdvice.Segment(
              name,
              leg.kind(),
              leg.fromC(),
              leg.toC(),
              leg.minutes(),
              leg.cool(),
              main ? why : "",
              main ? String.join("; ", checks) : "",
              all.isEmpty() ? cautions : List.of(),
              in.word()));
    }
    return all;
  }
}
