package seamsoak.property;

import seamsoak.numeric.Roots;

/**
 * The phase lines of plain iron and carbon, fitted to an equilibrium calculation.
 *
 * <pre>
 * A3(C)   = 910.697 - 467.002 C + 575.187 C^2 - 541.311 C^3 + 229.808 C^4   degC, 0.02-0.76 wt%
 * Accm(C) = 374.357 + 530.616 C - 96.143 C^2 + 10.424 C^3                   degC, 0.76-2.0 wt%
 * </pre>
 *
 * C weight percent. Source: computed from P. Gustafson, Scand. J. Metall. 14 (1985) 259 and A.T.
 * Dinsdale, Calphad 15 (1991) 317. Error of the fits: 0.4 and 0.25 C. Past 0.85 % the A3 line goes
 * on straight, so that it can be turned round; the Accm line goes on below 0.76 % as the metastable
 * line.
 */
public final class FeCLines {
  private static final double STRAIGHT_FROM = 0.85;
  private static final double MOST_CARBON = 6.6;

  private final double[] a3;
  private final double[] accm;

  FeCLines(Coefficients a3, Coefficients accm) {
    this.a3 = polynomial(a3, 5);
    this.accm = polynomial(accm, 4);
  }

  private static double[] polynomial(Coefficients c, int terms) {
    double[] k = new double[terms];
    k[0] = c.get("constant");
    for (int i = 1; i < terms; i++) {
      k[i] = c.get(i == 1 ? "C" : "C^" + i);
    }
    return k;
  }

  /** Temperature above which no ferrite is left at a carbon content, degC. */
  public double a3Celsius(double carbonPct) {
    if (carbonPct <= STRAIGHT_FROM) {
      return value(a3, carbonPct);
    }
    return value(a3, STRAIGHT_FROM) + (carbonPct - STRAIGHT_FROM) * slope(a3, STRAIGHT_FROM);
  }

  /** Temperature above which no cementite is left at a carbon content, degC. */
  public double accmCelsius(double carbonPct) {
    return value(accm, carbonPct);
  }

  /**
   * Carbon of austenite beside ferrite at a temperature, for a line shifted up by an alloy; 0 above
   * the line.
   */
  public double a3CarbonPct(double celsius, double shiftCelsius) {
    if (celsius >= a3[0] + shiftCelsius) {
      return 0;
    }
    double low = a3Celsius(MOST_CARBON) + shiftCelsius;
    return celsius <= low
        ? MOST_CARBON
        : Roots.between(c -> a3Celsius(c) + shiftCelsius - celsius, 0, MOST_CARBON, 1e-12);
  }

  private static double value(double[] k, double c) {
    double sum = 0;
    for (int i = k.length - 1; i >= 0; i--) {
      sum = sum * c + k[i];
    }
    return sum;
  }

  private static double slope(double[] k, double c) {
    double sum = 0;
    for (int i = k.length - 1; i >= 1; i--) {
      sum = sum * c + i * k[i];
    }
    return sum;
  }
}
