package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Kiln;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.schedule.ScheduleAdvice.Then;

/**
 * What to set a kiln's controller to: for each step done in it, climb, target and stay.
 *
 * @param kiln its limits
 */
record KilnProgram(Kiln kiln) {
  private static final double WARM_CELSIUS = 60;

  List<ProgramLine> of(List<ScheduleStep> steps) {
    List<ProgramLine> all = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).in() == Heater.KILN && !tooHot(steps.get(i))) {
        boolean goesOn =
            steps.get(i).kind() == StepKind.PRE_HEAT
                && i + 1 < steps.size()
                && steps.get(i + 1).in() == Heater.KILN;
        all.addAll(one(steps.get(i), goesOn));
      }
    }
    return List.copyOf(all);
  }

  /** Where nothing else is at hand a step stays with the kiln, though it does not get there. */
  private boolean tooHot(ScheduleStep step) {
    return step.hold().isPresent() && step.hottestC() > kiln.highestTaken().celsius() + 0.5;
  }

  private List<ProgramLine> one(ScheduleStep step, boolean goesOn) {
    List<ProgramLine> all = new ArrayList<>();
    List<Leg> legs = step.legs();
    for (int i = 0; i < legs.size(); i++) {
      Leg leg = legs.get(i);
      List<Leg> later = legs.subList(i + 1, legs.size());
      if (leg.kind() == Segment.Kind.RISE) {
        all.add(line(step.name(), all.size() + 1, climb(), leg, later, goesOn));
      } else if (leg.coolsIn(Coolant.Plain.KILN) && leg.fromC() > leg.toC() + 1) {
        double perHour = (leg.fromC() - leg.toC()) / (leg.minutes() / 60);
        // What comes hot from the anvil goes into a kiln that waits at the lower heat.
        double rate = i == 0 ? climb() : -perHour;
        all.add(line(step.name(), all.size() + 1, rate, leg, later, goesOn));
      }
    }
    return all;
  }

  private double climb() {
    return kiln.rampTaken().kelvinPerHour();
  }

  private static ProgramLine line(
      StepName step, int number, double rate, Leg leg, List<Leg> later, boolean goesOn) {
    double stay = later.stream().takeWhile(Leg::level).mapToDouble(Leg::minutes).sum();
    Optional<Leg> next = later.stream().dropWhile(Leg::level).findFirst();
    Then end = goesOn || leg.toC() < WARM_CELSIUS ? Then.GO_ON : Then.TAKE_OUT;
    Then then = next.map(KilnProgram::then).orElse(end);
    Optional<Coolant> bath = next.flatMap(Leg::cool).filter(c -> then == Then.QUENCH);
    return new ProgramLine(
        step,
        number,
        rate,
        leg.toC(),
        leg.lag().getAsDouble() + stay,
        then,
        bath.map(Coolant::word));
  }

  /** What to do for the leg that follows. */
  private static Then then(Leg next) {
    if (next.cool().isEmpty() || next.coolsIn(Coolant.Plain.KILN)) {
      return Then.GO_ON;
    }
    return next.coolsIn(Coolant.Plain.AIR) ? Then.TAKE_OUT : Then.QUENCH;
  }
}
