package seamsoak.advice;

import java.util.Locale;
import java.util.Optional;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.TemperingCurve;
import seamsoak.steel.TemperatureRange;

/**
 * The temper for a wanted hardness.
 *
 * @param celsius heat of each temper
 * @param wantedHrc what was asked
 * @param hardenCelsius heat it was hardened from
 * @param grainNumber of the austenite
 * @param coldestCelsius to which it was cooled
 */
record Tempering(
    double celsius,
    double wantedHrc,
    double hardenCelsius,
    double grainNumber,
    double coldestCelsius) {
  static final double HOURS = 2;
  static final int TIMES = 2;

  /** Cooler than this a temper hardly relieves martensite, C; common practice. */
  private static final double COOLEST = 150;

  static Tempering of(
      SteelNow edge, double hardenCelsius, double grain, double coldest, double wanted) {
    double asked =
        curve(edge, hardenCelsius, grain).kelvinFor(wanted, HOURS * TIMES).value() - 273.15;
    Optional<TemperatureRange> range = edge.steel().heatTreatment().temper();
    double low = Math.max(COOLEST, range.map(TemperatureRange::lowC).orElse(COOLEST));
    double high = range.map(TemperatureRange::highC).orElse(Double.POSITIVE_INFINITY);
    double celsius = Math.max(low, Math.min(high, HardeningHeat.round(asked)));
    return new Tempering(celsius, wanted, hardenCelsius, grain, coldest);
  }

  /** Hardness of a steel before them, HRC. */
  double quenchedHrc(SteelNow steel) {
    return steel.quenched(hardenCelsius, grainNumber).fullHrc(coldestCelsius).value();
  }

  /** Hardness of a steel after them, HRC. */
  double hrc(SteelNow steel) {
    TemperingCurve curve = curve(steel, hardenCelsius, grainNumber);
    return Math.min(quenchedHrc(steel), curve.hrc(celsius + 273.15, HOURS, TIMES).value());
  }

  /** Whether what is wanted cannot be had within the published range. */
  boolean misses(SteelNow edge) {
    return Math.abs(hrc(edge) - wantedHrc) > 1;
  }

  private static TemperingCurve curve(SteelNow steel, double hardenCelsius, double grain) {
    QuenchedSteel now = steel.quenched(hardenCelsius, grain);
    return now.tempering(steel.grade(), steel.quenchedAsBought(hardenCelsius, grain));
  }

  static String times() {
    return String.format(Locale.ROOT, "%d x %.0f h", TIMES, HOURS);
  }
}
