package seamsoak.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import seamsoak.billet.Cooling;
import seamsoak.billet.Equipment;
import seamsoak.billet.Shop;
import seamsoak.billet.Size;
import seamsoak.heat.HeatCurve;
import seamsoak.property.Section;

/**
 * How a piece heats and cools in this shop; makes the parts of steps.
 *
 * @param shop the assumptions
 * @param equipment what there is to heat in
 * @param size of the piece
 */
record Heats(Shop shop, Equipment equipment, Size size) {
  private static final double ZERO = ScheduleStep.ZERO_CELSIUS;
  static final double ROOM_CELSIUS = ScheduleStep.ROOM_KELVIN - ZERO;
  static final double BLACK_CELSIUS = Shop.BLACK_KELVIN - ZERO;

  /** Rise in a hot kiln, minutes per mm of a plate heated on both faces, at 870 and at 1150 C. */
  private static final double RISE_870 = 1.25;

  private static final double RISE_1150 = 0.65;
  private static final double LEAST_RISE_MINUTES = 6;

  /** A closed kiln that is switched off falls about this fast at red heat, C/h; judgement. */
  private static final double KILN_FALLS = 120;

  /** A fire above this is no kitchen's. */
  private static final double OVEN_CELSIUS = 260;

  /** How its rises are reckoned, in words. */
  static String rises() {
    return String.format(
        Locale.ROOT,
        "a rise takes %.2f min per mm at 870 C, %.2f at 1150 C, %.0f min at least; a kiln that is"
            + " off falls %.0f C per hour",
        RISE_870,
        RISE_1150,
        LEAST_RISE_MINUTES,
        KILN_FALLS);
  }

  Section section() {
    return new Section(size.thicknessMetres(), size.widthMetres());
  }

  /** The gentlest thing in the shop that reaches a temperature. */
  Heater heater(double celsius) {
    if (equipment.kilnTaken().there()
        && celsius <= equipment.kilnTaken().highestTaken().celsius() + 0.5) {
      return Heater.KILN;
    }
    if (celsius <= OVEN_CELSIUS) {
      return Heater.OVEN;
    }
    if (equipment.forgeTaken() != Equipment.Forge.NONE) {
      return Heater.FORGE;
    }
    return equipment.saltTaken() != Equipment.Salt.NONE ? Heater.SALT : Heater.KILN;
  }

  /** In a fire or kiln that is at heat, until the core is within 15 C of it. */
  Leg rise(double fromCelsius, double toCelsius) {
    double millimetres = size.thicknessMetres() * 1e3;
    double perMillimetre =
        Math.max(RISE_1150, RISE_870 - (toCelsius - 870) * (RISE_870 - RISE_1150) / (1150 - 870));
    double rise = 60 * Math.max(LEAST_RISE_MINUTES, perMillimetre * millimetres);
    double from = fromCelsius + ZERO;
    double to = toCelsius + ZERO;
    if (to <= Shop.DULL_KELVIN || from >= Shop.DULL_KELVIN) {
      return new Leg("rise", HeatCurve.riseAndHold(from, to, rise, 0), "");
    }
    double last = Math.min(Clearing.RISE_SECONDS, 0.9 * rise);
    return new Leg(
        "rise",
        HeatCurve.riseAndHold(from, Shop.DULL_KELVIN, rise - last, 0)
            .then(HeatCurve.riseAndHold(Shop.DULL_KELVIN, to, last, 0)),
        "");
  }

  Leg hold(double celsius, double minutes) {
    return new Leg("hold", HeatCurve.hold(celsius + ZERO, minutes * 60), "");
  }

  /** In still air to black, or to hand warm where it starts below that. */
  List<Leg> air(double fromCelsius) {
    if (fromCelsius <= BLACK_CELSIUS) {
      return List.of();
    }
    return List.of(new Leg("cool", shop.cooling(Cooling.AIR, size, fromCelsius + ZERO), "air"));
  }

  /** Down with the kiln at a rate, the fastest it falls unless that is slower. */
  Leg falling(double fromCelsius, double toCelsius, double perHour) {
    double hours = (fromCelsius - toCelsius) / Math.min(perHour, KILN_FALLS);
    return new Leg(
        "cool",
        new HeatCurve(
            List.of(new HeatCurve.Segment(fromCelsius + ZERO, toCelsius + ZERO, hours * 3600))),
        "kiln");
  }

  /** Down in the closed kiln and left there until all has changed, then air. */
  List<Leg> changedInKiln(double fromCelsius, double atCelsius, double minutes) {
    List<Leg> legs = new ArrayList<>();
    legs.add(falling(fromCelsius, atCelsius, KILN_FALLS));
    legs.add(new Leg("cool", HeatCurve.hold(atCelsius + ZERO, minutes * 60), "kiln"));
    legs.addAll(air(atCelsius));
    return legs;
  }

  /** Rise from room temperature and hold. */
  List<Leg> upAndHold(double celsius, double minutes) {
    return List.of(rise(ROOM_CELSIUS, celsius), hold(celsius, minutes));
  }
}
