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
      boolean falls = leg.coolsIn(Coolant.Plain.KILN);
      if (leg.kind() == Segment.Kind.RISE) {
        double stay = stays(legs, i + 1);
        all.add(
            line(
                step,
                all,
                climb(),
                leg.toC(),
                leg.lag().getAsDouble() + stay,
                then(legs, i, goesOn)));
      } else if (falls && leg.fromC() > leg.toC() + 1) {
        double perHour = (leg.fromC() - leg.toC()) / (leg.minutes() / 60);
        // What comes hot from the anvil goes into a kiln that waits at the lower heat.
        double rate = i == 0 ? climb() : -perHour;
        all.add(line(step, all, rate, leg.toC(), stays(legs, i + 1), then(legs, i, goesOn)));
      }
    }
    return all;
  }

  private static ProgramLine line(
      ScheduleStep step, List<ProgramLine> before, double rate, double to, double stay, Next next) {
    return new ProgramLine(
        step.name(), before.size() + 1, rate, to, stay, next.then(), next.quenchant());
  }

  private double climb() {
    return kiln.rampTaken().kelvinPerHour();
  }

  /** Minutes held from a leg on. */
  private static double stays(List<Leg> legs, int from) {
    double minutes = 0;
    for (int i = from;
        i < legs.size() && Math.abs(legs.get(i).fromC() - legs.get(i).toC()) < 1;
        i++) {
      minutes += legs.get(i).minutes();
    }
    return minutes;
  }

  /** What follows a segment, and the bath where that is a quench. */
  private record Next(Then then, Optional<String> quenchant) {
    static final Next GO_ON = new Next(Then.GO_ON, Optional.empty());
    static final Next TAKE_OUT = new Next(Then.TAKE_OUT, Optional.empty());
  }

  private static Next then(List<Leg> legs, int at, boolean goesOn) {
    int next = at + 1;
    while (next < legs.size() && Math.abs(legs.get(next).fromC() - legs.get(next).toC()) < 1) {
      next++;
    }
    if (next >= legs.size()) {
      return goesOn || legs.get(at).toC() < WARM_CELSIUS ? Next.GO_ON : Next.TAKE_OUT;
    }
    Leg cooling = legs.get(next);
    if (cooling.cool().isEmpty() || cooling.coolsIn(Coolant.Plain.KILN)) {
      return Next.GO_ON;
    }
    return cooling.coolsIn(Coolant.Plain.AIR)
        ? Next.TAKE_OUT
        : new Next(Then.QUENCH, Optional.of(cooling.cool().get().word()));
  }
}
