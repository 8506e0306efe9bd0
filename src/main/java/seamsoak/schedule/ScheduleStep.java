package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.heat.HeatCurve;
import seamsoak.safety.Stop;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.source.Caution;
import seamsoak.unit.Temperature;

/**
 * One step of a schedule as planned.
 *
 * @param name its kind, and which of several
 * @param fire where it is done
 * @param legs its parts in the fire and after it; none at the bench
 * @param task what to do and why
 * @param checks what to look for
 * @param refused why it must not be done as planned, if so
 */
record ScheduleStep(
    StepName name,
    Fire fire,
    List<Leg> legs,
    Task task,
    List<Check> checks,
    Optional<Stop> refused) {

  ScheduleStep {
    legs = List.copyOf(legs);
    checks = List.copyOf(checks);
  }

  /** One that may be done. */
  ScheduleStep(StepName name, Fire fire, List<Leg> legs, Task task, List<Check> checks) {
    this(name, fire, legs, task, checks, Optional.empty());
  }

  StepKind kind() {
    return name.kind();
  }

  Heater in() {
    return fire.in();
  }

  /** The whole of it. */
  HeatCurve curve() {
    return Leg.curve(legs);
  }

  /** Its curve as a chart draws it; where a face is not told apart it follows the core. */
  ScheduleAdvice.Curve drawn() {
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
    return legs.stream().filter(l -> l.kind() == Segment.Kind.HOLD).findFirst();
  }

  double hottestC() {
    return legs.isEmpty() ? 0 : curve().peakKelvin() - Temperature.ZERO_CELSIUS;
  }

  /** As the answer shows it. */
  ScheduleAdvice.Step shown(List<Caution> cautions) {
    return new ScheduleAdvice.Step(
        name,
        in(),
        task,
        hold().map(Leg::toC),
        hold().map(Leg::minutes),
        checks,
        cautions,
        refused);
  }

  /** Its parts as the answer shows them: one stands for the step, cautions come once. */
  List<Segment> segments(List<Caution> cautions) {
    List<Segment> all = new ArrayList<>();
    Optional<Leg> main = hold().or(() -> legs.stream().findFirst());
    for (Leg leg : legs) {
      boolean stands = main.filter(m -> m == leg).isPresent();
      all.add(
          new Segment(
              name,
              leg.kind(),
              leg.fromC(),
              leg.toC(),
              leg.minutes(),
              leg.cool(),
              stands ? Optional.of(task) : Optional.empty(),
              stands ? checks : List.of(),
              all.isEmpty() ? cautions : List.of(),
              in()));
    }
    return all;
  }
}
