package seamsoak.advice;

import java.util.ArrayList;
import java.util.List;
import seamsoak.heat.HeatCurve;

/**
 * A part of a step: the rise, the hold, a cooling.
 *
 * @param kind rise, hold or cool
 * @param curve of the core
 * @param face corners of the outer face on the same clock; none where it is as hot as the core
 * @param cool what it cools in, blank otherwise
 * @param lagMinutes how much later the core comes than a climbing kiln
 */
record Leg(String kind, HeatCurve curve, List<At> face, String cool, double lagMinutes) {
  private static final double ZERO_CELSIUS = 273.15;

  /** A corner of a curve. */
  record At(double minutes, double celsius) {}

  /** Core and face alike. */
  Leg(String kind, HeatCurve curve, String cool) {
    this(kind, curve, List.of(), cool, 0);
  }

  double fromC() {
    return curve.segments().get(0).fromKelvin() - ZERO_CELSIUS;
  }

  double toC() {
    return curve.segments().get(curve.segments().size() - 1).toKelvin() - ZERO_CELSIUS;
  }

  double minutes() {
    return curve.seconds() / 60;
  }

  /** The corners of the core's curve. */
  List<At> core() {
    return corners(curve);
  }

  static List<At> corners(HeatCurve curve) {
    List<At> all = new ArrayList<>();
    double seconds = 0;
    for (HeatCurve.Segment s : curve.segments()) {
      if (all.isEmpty()) {
        all.add(new At(0, s.fromKelvin() - ZERO_CELSIUS));
      }
      seconds += s.seconds();
      all.add(new At(seconds / 60, s.toKelvin() - ZERO_CELSIUS));
    }
    return all;
  }
}
