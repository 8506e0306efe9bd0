package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import seamsoak.heat.HeatCurve;
import seamsoak.schedule.ScheduleAdvice.Corner;

/**
 * A part of a step: the rise, the hold, a cooling.
 *
 * @param kind rise, hold or cool
 * @param curve of the core
 * @param face corners of the outer face on the same clock; none where it is as hot as the core
 * @param cool what it cools in, blank otherwise
 * @param lag minutes by which the core comes later than a climbing kiln; reckoned when asked for
 */
record Leg(String kind, HeatCurve curve, List<Corner> face, String cool, DoubleSupplier lag) {
  static final DoubleSupplier NO_LAG = () -> 0;

  /** Core and face alike. */
  Leg(String kind, HeatCurve curve, String cool) {
    this(kind, curve, List.of(), cool, NO_LAG);
  }

  /** The curves of parts, one after the other. */
  static HeatCurve curve(List<Leg> legs) {
    return new HeatCurve(legs.stream().flatMap(l -> l.curve().segments().stream()).toList());
  }

  double fromC() {
    return curve.segments().get(0).fromKelvin() - ScheduleStep.ZERO_CELSIUS;
  }

  double toC() {
    return curve.segments().get(curve.segments().size() - 1).toKelvin() - ScheduleStep.ZERO_CELSIUS;
  }

  double minutes() {
    return curve.seconds() / 60;
  }

  /** The corners of the core's curve. */
  List<Corner> core() {
    return corners(curve);
  }

  static List<Corner> corners(HeatCurve curve) {
    List<Corner> all = new ArrayList<>();
    double seconds = 0;
    for (HeatCurve.Segment s : curve.segments()) {
      if (all.isEmpty()) {
        all.add(new Corner(0, s.fromKelvin() - ScheduleStep.ZERO_CELSIUS));
      }
      seconds += s.seconds();
      all.add(new Corner(seconds / 60, s.toKelvin() - ScheduleStep.ZERO_CELSIUS));
    }
    return all;
  }
}
