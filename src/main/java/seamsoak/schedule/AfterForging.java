package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import seamsoak.billet.Exposure;
import seamsoak.billet.Shop;
import seamsoak.carbon.Edge;
import seamsoak.safety.Condition;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakReason;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

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
    double inAir = heats.airSeconds8to5();
    // It comes from the anvil, so even a kiln has to wait for it at the lower heat.
    List<Leg> legs = heats.down(slow, FORGED_CELSIUS, at, Heater.FORGE);
    course.carry(
        new ScheduleStep(
            "cool-down",
            slow && heats.kiln() ? Heater.KILN : Heater.BENCH,
            slow ? slowly(heats, at) : inAir(heats),
            slow
                ? guard.because() + ": cooled in air it lies hard and strained and may crack"
                : "no steel of it hardens in still air in this section: its middle takes about "
                    + Math.round(inAir)
                    + " s from "
                    + course.between(800, 500)
                    + fastest(steels, heats, inAir),
            List.of(
                slow
                    ? "when it is cold a file bites; if the file skates it is hard: anneal it before"
                        + " anything else"
                    : "black in shade before it touches steel or concrete",
                "edges and ends for cracks and open seams"),
            legs,
            Edge.SEALED,
            hardensInAir(guard),
            Optional.empty()),
        Structures.cooled(
            steels, heats, FORGED_CELSIUS, course.grainNumber(), slow && heats.kiln()));
  }

  private String slowly(Heats heats, double at) {
    return heats.kiln()
        ? "Put the billet into the kiln while it still glows, hold it at "
            + course.show(at)
            + " until it has changed, then let it cool in still air"
        : "Bury the billet, still glowing, in dry vermiculite or ash until a hand can bear it";
  }

  private static String inAir(Heats heats) {
    return String.format(
        Locale.ROOT,
        "Lay the billet in still, dry air: about %.0f min to black, %.0f min until a hand can bear"
            + " it",
        heats.minutesToBlack(FORGED_CELSIUS),
        heats.minutesToTouch(FORGED_CELSIUS));
  }

  /** What the steel that hardens most deeply asks for, to be held against what air does. */
  private String fastest(List<SteelNow> steels, Heats heats, double inAir) {
    return steels.stream()
        .filter(s -> s.hardens() && !s.beyondFormulas())
        .map(
            s ->
                Map.entry(
                    s.id(),
                    s.allowsInAir(heats.section(), FORGED_CELSIUS, course.grainNumber(), inAir)))
        .max(Map.Entry.comparingByValue())
        .map(
            e ->
                String.format(
                    Locale.ROOT,
                    ", and %s, coarse as its grain is by now, hardens only within %.0f s",
                    e.getKey(),
                    e.getValue()))
        .orElse("");
  }

  void soak(SoakAdvice.Recommended soak) {
    Heats heats = course.heats();
    double celsius = soak.temperatureC();
    List<Leg> up = heats.upAndHold(celsius, soak.minutes());
    double grain =
        course.grains().number(course.grains().after(Leg.curve(up), course.grainMetres()));
    List<SteelNow> before = course.steels();
    Guard guard = Guard.of(before, heats.section(), celsius, grain);
    boolean slow = guard.way() != Guard.Way.AIR;
    List<Leg> legs = new ArrayList<>(up);
    double at = changesAt(before);
    Heater in = heats.heater(celsius);
    legs.addAll(heats.down(slow, celsius, at, in));
    course.carry(
        new ScheduleStep(
            "soak",
            in,
            "Soak at "
                + course.show(celsius)
                + ", then "
                + heats.downInWords(slow, course.show(at), in),
            why(soak.reason(), course.units)
                + (slow ? "; cooled slowly because " + guard.because() : ""),
            List.of(
                in == Heater.KILN
                    ? "a thermocouple beside the work, in a wrap or a light reducing fire"
                    : "a thermocouple beside the work; count from when its color matches the fire",
                course.color(celsius)),
            legs,
            course.shop.edge(course.billet.soak().outsideTaken()),
            hardensInAir(guard),
            Optional.empty()),
        Structures.cooled(before, heats, celsius, grain, slow && heats.kiln()));
  }

  private static String why(SoakReason reason, UnitSystem units) {
    String within =
        "the coolest soak that clears the lines within "
            + TimeSpan.ofMinutes(reason.mostMinutes()).format(units);
    String costs = "; hotter is quicker but coarsens the grain and scales more";
    return switch (reason.kind()) {
      case COOLEST_BY_HISTORIES -> within + " in nine of ten possible histories" + costs;
      case COOLEST_BY_MIDDLE ->
          within + " by the middle estimate, which half of all billets outlast" + costs;
      case HOTTEST_ALLOWED ->
          "the hottest that the steels allow for forging, as long as you allow: it clears"
              + " the lines by the middle estimate, not in nine of ten histories";
      case NOTHING_SHOWS, CYCLES_CLEAR -> throw new IllegalStateException("no soak");
    };
  }

  static Set<Condition> hardensInAir(Guard guard) {
    return guard.way() == Guard.Way.AIR ? Set.of() : Set.of(Condition.AIR_HARDENING);
  }

  /** What the outer faces meet when nothing is said. */
  static Edge open(Course course) {
    return course.shop.edge(Exposure.OPEN);
  }
}
