package seamsoak.schedule.demand;

import java.util.List;
import java.util.stream.IntStream;
import seamsoak.property.hardening.PartlyHard;
import seamsoak.property.hardening.TemperingCurve;
import seamsoak.source.Estimate;
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
public record Tempering(
    double celsius,
    double wantedHrc,
    QuenchChoice quench,
    double hardenCelsius,
    double grainNumber,
    double coldestCelsius) {
  public static final double HOURS = 2;
  public static final int TIMES = 2;

  /** How far from the heat taken others are told, in steps of 5 K; judgement. */
  private static final int STEPS_TOLD = 10;

  private static final double STEP = 5;

  /** Cooler than this a temper hardly relieves martensite, C; common practice. */
  private static final double COOLEST = 150;

  /**
   * For the edge.
   *
   * @param hottestCelsius that the shop holds for hours
   */
  public static Tempering of(
      SteelNow edge,
      QuenchChoice quench,
      double hardenCelsius,
      double grain,
      double coldest,
      double wanted,
      double hottestCelsius) {
    double asked =
        curve(edge, quench, hardenCelsius, grain)
                .kelvinFor(hard(edge, quench, coldest).wanted(wanted), HOURS * TIMES)
                .value()
            - Temperature.ZERO_CELSIUS;
    double celsius =
        edge.steel()
            .heatTreatment()
            .temperNear(HardeningHeat.round(asked))
            .orElse(HardeningHeat.round(asked));
    return new Tempering(
        Math.max(COOLEST, Math.min(hottestCelsius, celsius)),
        wanted,
        quench,
        hardenCelsius,
        grain,
        coldest);
  }

  /** A heat of the tempers, and the hardness of the edge after them. */
  public record At(double celsius, double hrc) {}

  /**
   * What heats near the one taken would leave a steel with, the coolest first; those that its sheet
   * allows as far as the one taken does.
   */
  public List<At> near(SteelNow steel, double hottestCelsius) {
    return IntStream.rangeClosed(-STEPS_TOLD, STEPS_TOLD)
        .mapToDouble(i -> celsius + STEP * i)
        .filter(c -> c == celsius || c >= COOLEST && c <= hottestCelsius && onSheet(steel, c))
        .mapToObj(c -> new At(c, at(c).hrc(steel)))
        .toList();
  }

  private static boolean onSheet(SteelNow steel, double celsius) {
    return steel.steel().heatTreatment().temperNear(celsius).orElse(celsius) == celsius;
  }

  private Tempering at(double other) {
    return new Tempering(other, wantedHrc, quench, hardenCelsius, grainNumber, coldestCelsius);
  }

  /** Hardness of a steel before them, at an edge ground thin, HRC. */
  public double quenchedHrc(SteelNow steel) {
    return hard(steel, quench, coldestCelsius).quenchedHrc();
  }

  /** Hardness of a steel after them at such an edge, HRC. */
  public double hrc(SteelNow steel) {
    return estimate(steel).value();
  }

  /** The same with its band. */
  public Estimate estimate(SteelNow steel) {
    PartlyHard before = hard(steel, quench, coldestCelsius);
    Estimate all =
        curve(steel, quench, hardenCelsius, grainNumber)
            .hrc(celsius + Temperature.ZERO_CELSIUS, HOURS, TIMES);
    return all.map(h -> before.tempered(Math.min(before.fullHrc(), h)));
  }

  private static PartlyHard hard(SteelNow steel, QuenchChoice quench, double coldest) {
    QuenchChoice.Response taken = quench.of(steel).orElseThrow();
    return taken
        .austenite()
        .partlyHardEdge(
            quench.section(), taken.result().edgeHrc().value(), coldest, taken.bath().kind());
  }

  private static TemperingCurve curve(
      SteelNow steel, QuenchChoice quench, double hardenCelsius, double grain) {
    return quench
        .of(steel)
        .orElseThrow()
        .austenite()
        .tempering(steel.steel().grade(), steel.quenchedAsBought(hardenCelsius, grain));
  }
}
