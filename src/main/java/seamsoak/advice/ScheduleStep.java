package seamsoak.advice;

import java.util.List;
import java.util.Locale;
import seamsoak.advice.ScheduleAdvice.Segment;
import seamsoak.billet.Cooling;
import seamsoak.billet.Shop;
import seamsoak.billet.Size;
import seamsoak.carbon.Edge;
import seamsoak.heat.HeatCurve;

/**
 * One step of a schedule as planned: a rise, a hold, a cooling in still air to black.
 *
 * @param name such as {@code refine 1}
 * @param celsius temperature of the hold
 * @param holdSeconds how long
 * @param why the reason for it
 * @param check what to look for
 * @param outside edge of the outer faces
 */
record ScheduleStep(
    String name, double celsius, double holdSeconds, String why, String check, Edge outside) {
  static final double ROOM_KELVIN = 293.15;
  private static final double ZERO_CELSIUS = 273.15;

  /** Rise in a hot kiln, minutes per mm of a plate heated on both faces, at 870 and at 1150 C. */
  private static final double RISE_870 = 1.25;

  private static final double RISE_1150 = 0.65;
  private static final double LEAST_RISE_MINUTES = 6;

  /** How its rises are reckoned, in words. */
  static String rises() {
    return String.format(
        Locale.ROOT,
        "a rise takes %.2f min per mm at 870 C, %.2f at 1150 C, %.0f min at least",
        RISE_870,
        RISE_1150,
        LEAST_RISE_MINUTES);
  }

  double kelvin() {
    return celsius + ZERO_CELSIUS;
  }

  /** Its temperature-time curve for a piece of that size. */
  HeatCurve curve(Shop shop, Size size) {
    double millimetres = size.thicknessMetres() * 1e3;
    double perMillimetre =
        Math.max(RISE_1150, RISE_870 - (celsius - 870) * (RISE_870 - RISE_1150) / (1150 - 870));
    double rise = 60 * Math.max(LEAST_RISE_MINUTES, perMillimetre * millimetres);
    HeatCurve up;
    if (kelvin() > Shop.DULL_KELVIN) {
      double last = Math.min(Clearing.RISE_SECONDS, 0.9 * rise);
      up =
          HeatCurve.riseAndHold(ROOM_KELVIN, Shop.DULL_KELVIN, rise - last, 0)
              .then(HeatCurve.riseAndHold(Shop.DULL_KELVIN, kelvin(), last, holdSeconds));
    } else {
      up = HeatCurve.riseAndHold(ROOM_KELVIN, kelvin(), rise, holdSeconds);
    }
    return up.then(shop.cooling(Cooling.AIR, size, kelvin()));
  }

  /** The pieces of its curve as the answer shows them. */
  List<Segment> segments(HeatCurve curve, StepCautions cautions) {
    double rise = 0;
    double cool = 0;
    double end = kelvin();
    for (HeatCurve.Segment s : curve.segments()) {
      if (s.toKelvin() > s.fromKelvin()) {
        rise += s.seconds();
      } else if (s.toKelvin() < s.fromKelvin()) {
        cool += s.seconds();
        end = s.toKelvin();
      }
    }
    String word = name.split(" ")[0];
    List<String> said = cautions.at(word, celsius);
    double top = celsius;
    return List.of(
        new Segment(
            name,
            "rise",
            ROOM_KELVIN - ZERO_CELSIUS,
            top,
            rise / 60,
            "",
            "the core lags the face: the hold counts from when the core is there",
            "",
            said),
        new Segment(name, "hold", top, top, holdSeconds / 60, "", why, check, List.of()),
        new Segment(
            name,
            "cool",
            top,
            end - ZERO_CELSIUS,
            cool / 60,
            "air",
            "still air, down to where it is black in shade",
            "no red in shade before the next heat",
            List.of()));
  }
}
