package seamsoak.heatlog;

import seamsoak.carbon.Metal;
import seamsoak.property.phase.PhaseLines;
import seamsoak.unit.Temperature;

/**
 * How fast carbon moves in the austenite of a steel, by temperature: the engine's diffusivity at
 * its carbon, or at what its austenite holds beside ferrite or carbide where that is all it can.
 * Nothing below A1.
 *
 * <p>Kept as its integral over temperature, so that a straight piece of a curve takes no steps.
 */
public final class CarbonRate {
  private static final double STEP_KELVIN = 1;
  private static final double HOTTEST_CELSIUS = 1800;
  private static final double INSIDE = 1e-9;

  private final double startCelsius;
  private final double[] rate;
  private final double[] integral;

  private CarbonRate(double startCelsius, double[] rate) {
    this.startCelsius = startCelsius;
    this.rate = rate;
    this.integral = new double[rate.length];
    for (int i = 1; i < rate.length; i++) {
      integral[i] = integral[i - 1] + STEP_KELVIN * (rate[i - 1] + rate[i]) / 2;
    }
  }

  /** Of a steel as it came; {@code IllegalArgumentException} for a metal without phases. */
  public static CarbonRate of(Metal metal) {
    return of(metal, metal.startRatio());
  }

  /** The same with the carbon that it has by now. */
  public static CarbonRate of(Metal metal, double ratio) {
    PhaseLines lines = metal.law().phases().orElseThrow(IllegalArgumentException::new);
    double start = lines.alwaysAustenite() ? Temperature.ZERO_CELSIUS : lines.a1Celsius();
    double[] rate = new double[1 + (int) Math.ceil((HOTTEST_CELSIUS - start) / STEP_KELVIN)];
    for (int i = 0; i < rate.length; i++) {
      double celsius = start + i * STEP_KELVIN;
      double least = metal.lattice().ratio(lines.austeniteBesideFerritePct(celsius));
      double most = metal.lattice().ratio(lines.austeniteBesideCementitePct(celsius));
      double inside = Math.min(Math.max(ratio, least), most * (1 - INSIDE));
      rate[i] = metal.law().at(celsius + Temperature.ZERO_CELSIUS).potentialSlope(inside);
    }
    return new CarbonRate(start, rate);
  }

  /** Below it no carbon moves to speak of, C. */
  public double startCelsius() {
    return startCelsius;
  }

  /** Diffusivity, m2/s; 0 below A1. */
  public double at(double celsius) {
    return celsius < startCelsius ? 0 : read(rate, celsius);
  }

  /** Mean diffusivity along a straight piece from one temperature to another, m2/s. */
  public double mean(double fromCelsius, double toCelsius) {
    return Math.abs(toCelsius - fromCelsius) < INSIDE
        ? at(fromCelsius)
        : (sum(toCelsius) - sum(fromCelsius)) / (toCelsius - fromCelsius);
  }

  private double sum(double celsius) {
    if (celsius <= startCelsius) {
      return 0;
    }
    int i = line(celsius);
    double share = (celsius - startCelsius) / STEP_KELVIN - i;
    double here = rate[i] + share * (rate[i + 1] - rate[i]);
    return integral[i] + share * STEP_KELVIN * (rate[i] + here) / 2;
  }

  private double read(double[] table, double celsius) {
    int i = line(celsius);
    double share = (celsius - startCelsius) / STEP_KELVIN - i;
    return table[i] + share * (table[i + 1] - table[i]);
  }

  private int line(double celsius) {
    return Math.min(rate.length - 2, (int) ((celsius - startCelsius) / STEP_KELVIN));
  }
}
