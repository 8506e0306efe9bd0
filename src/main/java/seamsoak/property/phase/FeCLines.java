package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.steel.Element;

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
  private static final double EUTECTOID = 0.76;
  private static final double STRAIGHT_FROM = 0.85;
  private static final double MOST_CARBON = 6.6;
  private static final int MOST_STEPS = 60;
  private static final double SMALL_CHANGE = 1e-12;

  private final double[] a3;
  private final double[] accm;
  private final Correlation a3Correlation;
  private final Correlation accmCorrelation;

  public FeCLines(Coefficients a3, Coefficients accm) {
    this.a3 = polynomial(a3, 5);
    this.accm = polynomial(accm, 4);
    this.a3Correlation =
        a3.describe(
            "A3 of iron and carbon",
            "C",
            List.of(Correlation.range(Element.C, 0.02, EUTECTOID)),
            "0.4 C, of the fit");
    this.accmCorrelation =
        accm.describe(
            "Accm of iron and carbon",
            "C",
            List.of(Correlation.range(Element.C, EUTECTOID, 2)),
            "0.25 C, of the fit");
  }

  /** What the line between ferrite and austenite says about itself. */
  public Correlation a3() {
    return a3Correlation;
  }

  /** What the line between cementite and austenite says about itself. */
  public Correlation accm() {
    return accmCorrelation;
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
    double wanted = celsius - shiftCelsius;
    if (wanted <= a3Celsius(STRAIGHT_FROM)) {
      double c = STRAIGHT_FROM + (wanted - a3Celsius(STRAIGHT_FROM)) / slope(a3, STRAIGHT_FROM);
      return Math.min(MOST_CARBON, c);
    }
    // the line falls ever less steeply, so Newton from 0 comes up from below and never passes it
    double c = 0;
    for (int i = 0; i < MOST_STEPS; i++) {
      double change = (wanted - value(a3, c)) / slope(a3, c);
      c += change;
      // the next change would be about the square of this one
      if (change < SMALL_CHANGE) {
        break;
      }
    }
    return c;
  }

  /**
   * Carbon of austenite beside cementite at a temperature, for a line shifted up by an alloy as a +
   * b C; 0 above the line.
   */
  public double accmCarbonPct(double celsius, double shiftCelsius, double shiftPerCarbon) {
    double low = 0;
    double high = MOST_CARBON;
    if (value(accm, low) + shiftCelsius >= celsius) {
      return low;
    }
    if (value(accm, high) + shiftCelsius + shiftPerCarbon * high <= celsius) {
      return high;
    }
    // from the chord between eutectoid and 2 %, near enough for three or four rounds
    double c = EUTECTOID + (celsius - shiftCelsius - 726) * (2 - EUTECTOID) / (1134 - 726);
    c = Math.max(0.1, Math.min(3, c));
    for (int i = 0; i < MOST_STEPS; i++) {
      double over = value(accm, c) + shiftCelsius + shiftPerCarbon * c - celsius;
      if (over > 0) {
        high = c;
      } else {
        low = c;
      }
      double next = c - over / (slope(accm, c) + shiftPerCarbon);
      next = next > low && next < high ? next : 0.5 * (low + high);
      double change = Math.abs(next - c);
      c = next;
      if (change < SMALL_CHANGE) {
        break;
      }
    }
    return c;
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
