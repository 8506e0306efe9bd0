package seamsoak.advice;

import java.util.Locale;
import java.util.Optional;
import seamsoak.property.TemperingCurve;
import seamsoak.steel.TemperatureRange;

/**
 * The temper for a wanted hardness.
 *
 * @param celsius heat of each temper
 * @param wantedHrc what was asked
 * @param getsHrc what the edge comes to
 * @param range published range of the edge's steel
 * @param own whether the steel has a table of its own
 */
record Tempering(
    double celsius,
    double wantedHrc,
    double getsHrc,
    Optional<TemperatureRange> range,
    boolean own) {
  static final double HOURS = 2;
  static final int TIMES = 2;

  /** Cooler than this a temper hardly relieves martensite, C; common practice. */
  private static final double COOLEST = 150;

  static Tempering of(SteelNow edge, double hardenCelsius, double quenchCelsius, double wanted) {
    double quenched = edge.quenchedHrc(hardenCelsius, quenchCelsius);
    TemperingCurve curve = curve(edge, quenched);
    double asked = curve.kelvinFor(wanted, HOURS * TIMES).value() - 273.15;
    Optional<TemperatureRange> range = edge.steel().heatTreatment().temper();
    double low = Math.max(COOLEST, range.map(TemperatureRange::lowC).orElse(COOLEST));
    double high = range.map(TemperatureRange::highC).orElse(Double.POSITIVE_INFINITY);
    double celsius = Math.max(low, Math.min(high, HardeningHeat.round(asked)));
    return new Tempering(
        celsius,
        wanted,
        Math.min(quenched, curve.hrc(celsius + 273.15, HOURS, TIMES).value()),
        range,
        edge.k().hardening().tempering().of(edge.id()).isPresent());
  }

  /** Hardness of another steel in the same tempers. */
  double hrc(SteelNow steel, double hardenCelsius, double quenchCelsius) {
    double quenched = steel.quenchedHrc(hardenCelsius, quenchCelsius);
    return Math.min(quenched, curve(steel, quenched).hrc(celsius + 273.15, HOURS, TIMES).value());
  }

  /** Whether what is wanted cannot be had within the published range. */
  boolean misses() {
    return Math.abs(getsHrc - wantedHrc) > 1;
  }

  /** The steel's own table while its carbon is near what it came with, else the mean of all. */
  private static TemperingCurve curve(SteelNow steel, double quenchedHrc) {
    return steel
        .k()
        .hardening()
        .tempering()
        .of(steel.id())
        .filter(c -> steel.carbonPct() > 0.85 * steel.steel().analysis().carbon())
        .orElseGet(() -> steel.k().hardening().tempering().usual(quenchedHrc));
  }

  static String times() {
    return String.format(Locale.ROOT, "%d x %.0f h", TIMES, HOURS);
  }
}
