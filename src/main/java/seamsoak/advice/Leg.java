package seamsoak.advice;

import seamsoak.heat.HeatCurve;

/**
 * A part of a step: the rise, the hold, a cooling.
 *
 * @param kind rise, hold or cool
 * @param curve temperature against time, above room temperature
 * @param cool what it cools in, blank otherwise
 */
record Leg(String kind, HeatCurve curve, String cool) {
  private static final double ZERO_CELSIUS = 273.15;

  double fromC() {
    return curve.segments().get(0).fromKelvin() - ZERO_CELSIUS;
  }

  double toC() {
    return curve.segments().get(curve.segments().size() - 1).toKelvin() - ZERO_CELSIUS;
  }

  double minutes() {
    return curve.seconds() / 60;
  }
}
