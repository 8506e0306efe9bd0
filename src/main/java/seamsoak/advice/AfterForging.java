package seamsoak.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import seamsoak.advice.ScheduleStep.Becomes;
import seamsoak.billet.Exposure;
import seamsoak.billet.Shop;
import seamsoak.carbon.Edge;

/** The first steps: down from the last forging heat, then the soak. */
record AfterForging(Course course) {
  private static final double FORGED_CELSIUS = Shop.DULL_KELVIN - ScheduleStep.ZERO_CELSIUS;

  /** Time for pearlite to form throughout in a deep-hardening steel, min; judgement. */
  static final double CHANGE_MINUTES = 120;

  private static final double CHANGE_BELOW_AC1 = 50;
  private static final double CHANGE_AT_MOST = 650;

  /** Where a kiln-cooled piece is held until it has changed: the nose of pearlite. */
  static double changesAt(List<SteelNow> steels) {
    double ac1 =
        steels.stream()
            .filter(SteelNow::hardens)
            .mapToDouble(SteelNow::ac1C)
            .min()
            .orElse(CHANGE_AT_MOST + CHANGE_BELOW_AC1);
    return Math.min(CHANGE_AT_MOST, HardeningHeat.round(ac1 - CHANGE_BELOW_AC1));
  }

  void coolDown() {
    Heats heats = course.heats();
    List<SteelNow> steels = course.steels();
    Guard guard = Guard.of(steels, heats.section(), FORGED_CELSIUS, course.grainNumber());
    double at = changesAt(steels);
    boolean slow = guard.way() != Guard.Way.AIR;
    List<Leg> legs =
        slow ? heats.changedInKiln(FORGED_CELSIUS, at, CHANGE_MINUTES) : heats.air(FORGED_CELSIUS);
    course.carry(
        new ScheduleStep(
            "cool-down",
            slow ? heats.heater(at) : Heater.BENCH,
            slow
                ? "Put the billet into the kiln while it still glows, hold it at "
                    + course.show(at)
                    + " until it has changed, then let it cool in still air"
                : String.format(
                    Locale.ROOT,
                    "Lay the billet in still, dry air until a hand can bear it, about %.0f min",
                    heats.minutesToTouch(FORGED_CELSIUS)),
            slow
                ? guard.because() + ": cooled in air it lies hard and strained and may crack"
                : "no steel of it hardens in still air in this section",
            List.of(
                slow
                    ? "when it is cold a file bites; if the file skates it is hard: anneal it before"
                        + " anything else"
                    : "black in shade before it touches steel or concrete",
                "edges and ends for cracks and open seams"),
            legs,
            Edge.SEALED,
            slow ? Becomes.ANNEALED : Becomes.AIR_COOLED,
            hardensInAir(guard),
            Optional.empty()),
        Structures.cooled(steels, heats, FORGED_CELSIUS, course.grainNumber(), slow));
  }

  void soak(SoakAdvice.Recommended soak) {
    Heats heats = course.heats();
    double celsius = soak.temperatureC();
    List<Leg> up = heats.upAndHold(celsius, soak.minutes());
    double grain =
        course
            .grains()
            .number(
                course
                    .grains()
                    .after(up.get(0).curve().then(up.get(1).curve()), course.grainMetres()));
    List<SteelNow> before = course.steels();
    Guard guard = Guard.of(before, heats.section(), celsius, grain);
    boolean slow = guard.way() != Guard.Way.AIR;
    List<Leg> legs = new ArrayList<>(up);
    double at = changesAt(before);
    legs.addAll(slow ? heats.changedInKiln(celsius, at, CHANGE_MINUTES) : heats.air(celsius));
    Heater in = heats.heater(celsius);
    course.carry(
        new ScheduleStep(
            "soak",
            in,
            "Soak at "
                + course.show(celsius)
                + (slow
                    ? ", then let it fall to " + course.show(at) + " in the kiln and hold it there"
                    : ", then still air to black"),
            soak.reason() + (slow ? "; cooled in the kiln because " + guard.because() : ""),
            List.of(
                in == Heater.KILN
                    ? "a thermocouple beside the work, in a wrap or a light reducing fire"
                    : "a thermocouple beside the work; count from when its color matches the fire",
                course.color(celsius)),
            legs,
            course.shop.edge(course.billet.soak().outsideTaken()),
            slow ? Becomes.ANNEALED : Becomes.AIR_COOLED,
            hardensInAir(guard),
            Optional.empty()),
        Structures.cooled(before, heats, celsius, grain, slow));
  }

  static Set<Condition> hardensInAir(Guard guard) {
    return guard.way() == Guard.Way.AIR ? Set.of() : Set.of(Condition.AIR_HARDENING);
  }

  /** What the outer faces meet when nothing is said. */
  static Edge open(Course course) {
    return course.shop.edge(Exposure.OPEN);
  }
}
