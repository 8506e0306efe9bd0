package seamsoak.property.forging;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.LowAlloy;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Estimate;
import seamsoak.source.Range;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Size of austenite grains after a stay in the fire, free of particles. Rather coarse for steel
 * with vanadium or aluminum nitride, which the law knows nothing of; for cementite see {@link
 * Nishizawa1997Pinning}.
 *
 * <p>d = 76671 exp(-Q / (R T)) t^0.211, Q = 89098 + 3581 C + 1211 Ni + 1443 Cr + 4031 Mo
 *
 * <p>d in um, read as the mean intercept; Q in J/mol; elements in wt%; T in K; t in s; R = 8.314
 * J/mol/K.
 *
 * <p>S.-J. Lee, Y.-K. Lee, Mater. Des. 29 (2008) 1840-1844; coefficients from memory. Without a
 * starting size: the first moment makes it.
 *
 * <p>Range: not at hand ("16 low alloy steels"); taken as low alloy up to 0.6 %C and 800 to 1250 C,
 * judgement. Alloying elements are capped at the limits of {@link LowAlloy}.
 *
 * <p>Stated error: not at hand. Of 217 published sizes of low-alloy steels, read second-hand, eight
 * of ten lie between {@link #COARSER} grain size numbers coarser and {@link #FINER} finer, the
 * middle one at half the size: the finer ones are of steel killed with aluminum, the coarser ones
 * of plain melts. A smith rarely knows which he has, so this is the band.
 */
public final class LeeLee2008GrainGrowth extends PublishedFormula {
  /** How much coarser grains may be, in grain size numbers. */
  public static final double COARSER = 1.5;

  /** How much finer. */
  public static final double FINER = 3.8;

  private static final double GAS_CONSTANT = 8.314;
  private static final double MICROMETRE = 1e-6;
  private static final double LONGEST_STEP_KELVIN = 5;
  private static final List<Range> RANGES =
      Stream.concat(
              LowAlloy.ranges(0, 0.6).stream(), Stream.of(Correlation.celsiusRange(800, 1250)))
          .toList();
  private static final Element[] ELEMENTS = {Element.C, NI, CR, MO};

  private final double factorMetres = k.get("factor") * MICROMETRE;
  private final double exponent = k.get("time exponent");

  public LeeLee2008GrainGrowth(Coefficients k) {
    super(k, "austenite grain size", "m", RANGES, "1.5 grain size numbers coarser to 3.8 finer");
  }

  /** Grain size after a time at one temperature, m. */
  public double metres(Composition c, double kelvin, double seconds) {
    return Math.pow(growth(joules(c), kelvin) * seconds, exponent);
  }

  /** A size with the band that is told with it. */
  public Estimate estimate(double metres) {
    return new Estimate(
        metres,
        metres * Math.pow(2, -FINER / 2),
        metres * Math.pow(2, COARSER / 2),
        k.source(),
        List.of());
  }

  /**
   * Grain size after a temperature-time curve of straight pieces, m. Each moment goes on from the
   * time that would have given the size reached so far at its temperature; so d^(1/0.211) is a sum
   * over the moments.
   *
   * @param startMetres grain size before, 0 for grains just formed
   * @param seconds times of the corners, rising
   * @param kelvin temperatures of the corners
   * @param most what grains do not outgrow at a temperature, K, m
   */
  public double metresAfter(
      Composition c,
      double startMetres,
      double[] seconds,
      double[] kelvin,
      DoubleUnaryOperator most) {
    double joules = joules(c);
    double sum = Math.pow(startMetres, 1 / exponent);
    for (int i = 1; i < seconds.length; i++) {
      double span = seconds[i] - seconds[i - 1];
      double rise = kelvin[i] - kelvin[i - 1];
      int steps = 1 + (int) (Math.abs(rise) / LONGEST_STEP_KELVIN);
      for (int j = 0; j < steps; j++) {
        double from = growth(joules, kelvin[i - 1] + rise * j / steps);
        double halfway = kelvin[i - 1] + rise * (j + 0.5) / steps;
        double middle = growth(joules, halfway);
        double to = growth(joules, kelvin[i - 1] + rise * (j + 1) / steps);
        double grown = sum + span / steps * (from + 4 * middle + to) / 6;
        // held at that size, and left as they are where they are coarser by then
        sum = Math.max(sum, Math.min(grown, Math.pow(most.applyAsDouble(halfway), 1 / exponent)));
      }
    }
    return Math.pow(sum, exponent);
  }

  private double joules(Composition c) {
    return k.get("constant") + k.linear(LowAlloy.capped(c), ELEMENTS);
  }

  /** Growth of d^(1/exponent) per second. */
  private double growth(double joules, double kelvin) {
    return Math.pow(factorMetres * Math.exp(-joules / (GAS_CONSTANT * kelvin)), 1 / exponent);
  }
}
