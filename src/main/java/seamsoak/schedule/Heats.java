package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import seamsoak.billet.Equipment;
import seamsoak.billet.Shop;
import seamsoak.billet.Size;
import seamsoak.heat.Environment;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.Section;
import seamsoak.heat.SectionCurve;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.Quenchant;
import seamsoak.property.section.FurnaceHeat;
import seamsoak.property.section.SectionHeat;
import seamsoak.schedule.ScheduleAdvice.Corner;
import seamsoak.schedule.demand.Change;
import seamsoak.schedule.demand.Down;
import seamsoak.schedule.demand.QuenchChoice;
import seamsoak.unit.Temperature;

/**
 * How a piece heats and cools in this shop; makes the parts of steps.
 *
 * @param shop the assumptions
 * @param equipment what there is to heat in
 * @param size of the piece
 */
record Heats(Shop shop, Equipment equipment, Size size) {
  private static final double ZERO = Temperature.ZERO_CELSIUS;
  private static final double ROOM_CELSIUS = QuenchedSteel.ROOM_CELSIUS;

  /** Film coefficient of molten salt, W/m2/K; judgement. */
  private static final double SALT_FILM = 600;

  /** Longer than this a forge holds no heat below welding, min; judgement. */
  static final double FORGE_MINUTES = 3;

  /** A fire above this is no kitchen's. */
  private static final double OVEN_CELSIUS = 260;

  /** What a piece is buried in, an id of the quenchants. */
  private static final String ASH = "vermiculite";

  private static final double STEP_KELVIN = 25;
  private static final double WARM_CELSIUS = 50;

  Section section() {
    return new Section(size.thicknessMetres(), size.widthMetres());
  }

  private SectionHeat sections() {
    return shop.correlations().sections();
  }

  /** The gentlest thing in the shop that reaches a temperature. */
  Heater heater(double celsius) {
    if (equipment.kilnReaches(celsius)) {
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

  /**
   * What a temper is held in. No forge holds so cool a heat for hours: without kiln or salt there
   * is an oven, and it ends where kitchens' do.
   */
  Heater temperer(double celsius) {
    Heater gentlest = heater(celsius);
    return gentlest != Heater.FORGE
        ? gentlest
        : equipment.saltTaken() == Equipment.Salt.NONE ? Heater.OVEN : Heater.SALT;
  }

  /** The hottest temper that there is something to hold it in for. */
  double hottestTemperCelsius() {
    return kiln() || equipment.saltTaken() != Equipment.Salt.NONE
        ? Double.POSITIVE_INFINITY
        : OVEN_CELSIUS;
  }

  /** Put in hot, until the core is within 15 C. */
  Leg rise(double fromCelsius, double toCelsius) {
    return rise(fromCelsius, toCelsius, heater(toCelsius));
  }

  Leg rise(double fromCelsius, double toCelsius, Heater in) {
    FurnaceHeat furnace = sections().furnace();
    double to = toCelsius + ZERO;
    double from = fromCelsius + ZERO;
    Environment around =
        switch (in) {
          case FORGE -> furnace.forge(to + Margins.FORGE_ABOVE);
          case SALT -> Environment.steady(to, SALT_FILM, 0);
          case KILN, OVEN, BENCH -> furnace.kiln(to);
        };
    double close = Math.min(Margins.CLOSE_KELVIN, (to - from) / 2);
    SectionCurve curve = sections().heat(section(), from, around, to - close);
    HeatCurve core = reaching(curve.core(STEP_KELVIN), to);
    List<Corner> face = Leg.corners(curve.face(STEP_KELVIN));
    return Leg.rise(core, face, in == Heater.KILN ? () -> lagMinutes(from, to, close) : Leg.NO_LAG);
  }

  /** The last piece drawn up to where the hold begins. */
  private static HeatCurve reaching(HeatCurve curve, double kelvin) {
    List<HeatCurve.Segment> parts = new ArrayList<>(curve.segments());
    HeatCurve.Segment last = parts.remove(parts.size() - 1);
    parts.add(new HeatCurve.Segment(last.fromKelvin(), kelvin, last.seconds()));
    return new HeatCurve(parts);
  }

  /** How long after the kiln, climbing as fast as it can, the core arrives. */
  private double lagMinutes(double fromKelvin, double toKelvin, double close) {
    double perHour = equipment.kilnTaken().rampTaken().kelvinPerHour();
    Environment climbing = sections().furnace().kilnRamp(fromKelvin, toKelvin, perHour);
    double core = sections().heat(section(), fromKelvin, climbing, toKelvin - close).seconds();
    return Math.max(0, core - climbing.around().settledSeconds()) / 60;
  }

  Leg hold(double celsius, double minutes) {
    return Leg.hold(HeatCurve.hold(celsius + ZERO, minutes * 60));
  }

  /** In still air to black; nothing when it is black already. */
  List<Leg> air(double fromCelsius) {
    if (fromCelsius <= Shop.BLACK_CELSIUS) {
      return List.of();
    }
    return List.of(
        of(
            Coolant.Plain.AIR,
            sections().coolInAir(section(), fromCelsius + ZERO, Shop.BLACK_KELVIN)));
  }

  private static Leg of(Coolant in, SectionCurve curve) {
    return Leg.cooling(in, curve.core(STEP_KELVIN), Leg.corners(curve.face(STEP_KELVIN)));
  }

  /** Minutes in still air to black. */
  double minutesToBlack(double fromCelsius) {
    return Leg.curve(air(fromCelsius)).seconds() / 60;
  }

  /** Minutes in still air until a hand can bear it. */
  double minutesToTouch(double fromCelsius) {
    return sections().coolInAir(section(), fromCelsius + ZERO, WARM_CELSIUS + ZERO).seconds() / 60;
  }

  /** The bath takes the core to a few degrees above its own heat. */
  Leg quench(double fromCelsius, QuenchChoice choice) {
    double bath = choice.celsius() + ZERO;
    SectionCurve curve =
        sections()
            .quench(
                section(),
                fromCelsius + ZERO,
                choice.quenchant(),
                choice.quenchant().severity(),
                bath,
                bath + Margins.CLOSE_KELVIN);
    return of(new Coolant.Bath(choice.quenchant().id()), curve);
  }

  /** Down with the kiln at a rate, the fastest it falls unless that is slower. */
  Leg falling(double fromCelsius, double toCelsius, double perHour) {
    double hours = (fromCelsius - toCelsius) / Math.min(perHour, Margins.KILN_FALLS);
    return Leg.cooling(
        Coolant.Plain.KILN,
        new HeatCurve(
            List.of(new HeatCurve.Segment(fromCelsius + ZERO, toCelsius + ZERO, hours * 3600))));
  }

  /** Whether there is a kiln to cool slowly in. */
  boolean kiln() {
    return equipment.kilnTaken().there();
  }

  /** In the kiln and left there until all has changed, then air. */
  private List<Leg> changedInKiln(Leg there, Change change) {
    List<Leg> legs = new ArrayList<>();
    legs.add(there);
    legs.add(
        Leg.cooling(
            Coolant.Plain.KILN, HeatCurve.hold(change.celsius() + ZERO, change.minutes() * 60)));
    legs.addAll(air(change.celsius()));
    return legs;
  }

  /** From the fire into a kiln that waits at a lower heat. */
  private Leg into(double fromCelsius, double toCelsius) {
    double to = toCelsius + ZERO;
    SectionCurve curve =
        sections()
            .heat(
                section(),
                fromCelsius + ZERO,
                sections().furnace().kiln(to),
                to + Margins.CLOSE_KELVIN);
    return Leg.cooling(
        Coolant.Plain.KILN,
        reaching(curve.core(STEP_KELVIN), to),
        Leg.corners(curve.face(STEP_KELVIN)));
  }

  /** Buried until black: as slow as it gets without a kiln. */
  Leg buried(double fromCelsius) {
    Quenchant ash = shop.correlations().hardening().quenchants().find(ASH).orElseThrow();
    return of(
        new Coolant.Bath(ASH),
        sections()
            .quench(
                section(),
                fromCelsius + ZERO,
                ash,
                ash.severity(),
                ROOM_CELSIUS + ZERO,
                Shop.BLACK_KELVIN));
  }

  /**
   * In still air; where it is to be slow, in the kiln until all has changed.
   *
   * @param in what it was heated in
   */
  Down down(boolean slowly, Change change, Heater in) {
    Down.Way slow =
        !kiln() ? Down.Way.BURIED : in == Heater.KILN ? Down.Way.FALLS_IN_KILN : Down.Way.INTO_KILN;
    return new Down(slowly ? slow : Down.Way.STILL_AIR, change);
  }

  List<Leg> down(Down down, double fromCelsius) {
    Change change = down.change();
    return switch (down.way()) {
      case STILL_AIR -> air(fromCelsius);
      case BURIED -> List.of(buried(fromCelsius));
      case FALLS_IN_KILN ->
          changedInKiln(falling(fromCelsius, change.celsius(), Margins.KILN_FALLS), change);
      case INTO_KILN -> changedInKiln(into(fromCelsius, change.celsius()), change);
    };
  }

  /** How long the middle takes from 800 to 500 C in still air, s. */
  double airSeconds8to5() {
    return sections()
        .coolInAir(section(), Shop.DULL_KELVIN, 500 + ZERO)
        .coreSecondsBetween(800 + ZERO, 500 + ZERO)
        .orElseThrow();
  }

  /** Rise from room temperature and hold. */
  List<Leg> upAndHold(double celsius, double minutes) {
    return List.of(rise(ROOM_CELSIUS, celsius), hold(celsius, minutes));
  }
}
