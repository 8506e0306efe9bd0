package seamsoak.schedule;

import java.util.Optional;
import seamsoak.heat.Section;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.TemperingCurve;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Temperature;

/**
 * The temper for a wanted hardness.
 *
 * @param celsius heat of each temper
 * @param wantedHrc what was asked
 * @param quench it comes from
 * @param hardenCelsius heat it was hardened from
 * @param grainNumber of the austenite
 * @param coldestCelsius to which it was cooled
 */
record Tempering(
    double celsius,
    double wantedHrc,
    QuenchChoice quench,
    double hardenCelsius,
    double grainNumber,
    double coldestCelsius) {
  static final double HOURS = 2;
  static final int TIMES = 2;

  /** Cooler than this a temper hardly relieves martensite, C; common practice. */
  private static final double COOLEST = 150;

  /** An edge going into the quench is left about this thick, m; common practice. */
  private static final double EDGE_METRES = 1e-3;

  static Tempering of(
      SteelNow edge,
      QuenchChoice quench,
      double hardenCelsius,
      double grain,
      double coldest,
      double wanted) {
    double asked =
        curve(edge, hardenCelsius, grain).kelvinFor(wanted, HOURS * TIMES).value()
            - Temperature.ZERO_CELSIUS;
    Optional<TemperatureRange> range = edge.steel().heatTreatment().temper();
    double low = Math.max(COOLEST, range.map(TemperatureRange::lowC).orElse(COOLEST));
    double high = range.map(TemperatureRange::highC).orElse(Double.POSITIVE_INFINITY);
    double celsius = Math.max(low, Math.min(high, HardeningHeat.round(asked)));
    return new Tempering(celsius, wanted, quench, hardenCelsius, grain, coldest);
  }

  /** Hardness of a steel before them, at an edge ground thin, HRC. */
  double quenchedHrc(SteelNow steel) {
    QuenchedSteel austenite = steel.quenched(hardenCelsius, grainNumber);
    double chilled =
        austenite.fullHrc(coldestCelsius).value()
            - austenite.fullHrc(QuenchedSteel.ROOM_CELSIUS).value();
    double edge = Math.min(EDGE_METRES, quench.section().thicknessMetres());
    return chilled + austenite.coreHrc(Section.plate(edge), quench.quenchant()).value();
  }

  /** Hardness of a steel after them at such an edge, HRC. */
  double hrc(SteelNow steel) {
    TemperingCurve curve = curve(steel, hardenCelsius, grainNumber);
    return Math.min(
        quenchedHrc(steel), curve.hrc(celsius + Temperature.ZERO_CELSIUS, HOURS, TIMES).value());
  }

  private static TemperingCurve curve(SteelNow steel, double hardenCelsius, double grain) {
    QuenchedSteel now = steel.quenched(hardenCelsius, grain);
    return now.tempering(steel.steel().grade(), steel.quenchedAsBought(hardenCelsius, grain));
  }
}
