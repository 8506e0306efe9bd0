package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import seamsoak.billet.Shop;
import seamsoak.carbon.Edge;
import seamsoak.safety.Condition;
import seamsoak.schedule.demand.Change;
import seamsoak.schedule.demand.Down;
import seamsoak.schedule.demand.Guard;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.soak.SoakAdvice;

/** The first steps: down from the last forging heat, then the soak. */
record AfterForging(Course course) {
  Course coolDown() {
    Heats heats = course.heats();
    List<SteelNow> steels = course.steels();
    Guard guard = Guard.of(steels, heats.section(), Shop.DULL_CELSIUS, course.grainNumber());
    boolean slow = guard.way() != Guard.Way.AIR;
    // It comes from the anvil, so even a kiln has to wait for it at the lower heat.
    Down down = heats.down(slow, Change.of(steels), Heater.FORGE);
    return course.carry(
        new ScheduleStep(
            StepName.only(StepKind.COOL_DOWN),
            new Fire(down.inKiln() ? Heater.KILN : Heater.BENCH, Edge.SEALED, hardensInAir(guard)),
            heats.down(down, Shop.DULL_CELSIUS),
            slow
                ? new Task.CoolSlowly(Optional.of(down.change()).filter(c -> down.inKiln()), guard)
                : inAir(steels, heats),
            List.of(
                slow ? Check.Look.COLD_FILE_BITES : Check.Look.BLACK_BEFORE_STEEL,
                Check.Look.CRACKS_AND_SEAMS)),
        Structures.cooled(steels, heats, Shop.DULL_CELSIUS, course.grainNumber(), down.inKiln()));
  }

  /** What air does, held against what the steel asks for that hardens most deeply. */
  private Task inAir(List<SteelNow> steels, Heats heats) {
    double seconds = heats.airSeconds8to5();
    double grain = course.grainNumber();
    return new Task.CoolInAir(
        heats.minutesToBlack(Shop.DULL_CELSIUS),
        heats.minutesToTouch(Shop.DULL_CELSIUS),
        seconds,
        steels.stream()
            .filter(s -> s.hardens() && !s.beyondFormulas())
            .map(
                s ->
                    new Task.Allowance(
                        s.id(), s.allowsInAir(heats.section(), Shop.DULL_CELSIUS, grain, seconds)))
            .max(Comparator.comparingDouble(Task.Allowance::seconds)));
  }

  Course soak(SoakAdvice.Recommended soak) {
    Heats heats = course.heats();
    double celsius = soak.temperatureC();
    List<Leg> legs = new ArrayList<>(heats.upAndHold(celsius, soak.minutes()));
    double grain =
        course.grains().number(course.grains().after(Leg.curve(legs), course.grainMetres()));
    List<SteelNow> before = course.steels();
    Guard guard = Guard.of(before, heats.section(), celsius, grain);
    Heater in = heats.heater(celsius);
    Down down = heats.down(guard.way() != Guard.Way.AIR, Change.of(before), in);
    legs.addAll(heats.down(down, celsius));
    return course.carry(
        new ScheduleStep(
            StepName.only(StepKind.SOAK),
            new Fire(
                in, course.shop().edge(course.billet().soak().outsideTaken()), hardensInAir(guard)),
            legs,
            new Task.Soak(soak, down, guard),
            List.of(
                in == Heater.KILN
                    ? Check.Look.THERMOCOUPLE_IN_KILN
                    : Check.Look.THERMOCOUPLE_IN_FIRE,
                course.color(celsius))),
        Structures.cooled(before, heats, celsius, grain, down.inKiln()));
  }

  static Set<Condition> hardensInAir(Guard guard) {
    return guard.way() == Guard.Way.AIR ? Set.of() : Set.of(Condition.AIR_HARDENING);
  }
}
