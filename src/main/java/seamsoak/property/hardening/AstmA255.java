package seamsoak.property.hardening;

import static seamsoak.steel.Element.C;
import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.CU;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Range;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Ideal diameter: the round bar of which half the middle turns to martensite in a quench so hard
 * that the surface takes the temperature of the bath at once.
 *
 * <p>DI = fC fMn fSi fNi fCr fMo fCu fV 1.083^(7 - G)
 *
 * <p>DI in inches; G ASTM grain size number of the austenite; elements in wt% dissolved in it. fC =
 * 0.54 C up to 0.39; 0.171 + 0.001 C + 0.265 C^2 up to 0.55; 0.115 + 0.268 C - 0.038 C^2 up to
 * 0.65; 0.143 + 0.2 C up to 0.75; 0.062 + 0.409 C - 0.135 C^2 up to 0.90. fMn = 1 + 3.3333 Mn up to
 * 1.20, 5.10 Mn - 1.12 above. fNi = 1 + 0.363 Ni up to 1.5, above 0.3211 + 1.4501 Ni - 0.6119 Ni^2
 * + 0.1253 Ni^3. fSi = 1 + 0.7 Si; fCr = 1 + 2.16 Cr; fMo = 1 + 3 Mo; fCu = 1 + 0.365 Cu; fV = 1 +
 * 1.73 V.
 *
 * <p>ASTM A255, factors read in several restatements; fV and the grain size 8 from memory.
 *
 * <p>Range: up to 0.90 %C, 1.95 %Mn, 2 %Si, 3.5 %Ni, 1.75 %Cr, 0.55 %Mo, 0.55 %Cu, 0.2 %V; G 4 to
 * 8, which no remark watches. The limits of Cr, Mo, Cu and V are from memory. Carbon, manganese,
 * silicon and nickel are taken at their limits beyond them. Elements bound in carbide do nothing,
 * so with vanadium, tungsten or undissolved carbide the result is an upper bound.
 *
 * <p>Stated error: none in the copies.
 */
public final class AstmA255 extends PublishedFormula {
  private static final List<Range> LIMITS =
      List.of(
          Correlation.range(C, 0, 0.90),
          Correlation.range(MN, 0, 1.95),
          Correlation.range(SI, 0, 2),
          Correlation.range(NI, 0, 3.5),
          Correlation.range(CR, 0, 1.75),
          Correlation.range(MO, 0, 0.55),
          Correlation.range(CU, 0, 0.55),
          Correlation.range(V, 0, 0.2));

  /** Those of carbon, manganese, silicon and nickel. */
  private static final List<Range> CAPS = LIMITS.subList(0, 4);

  private static final double METRES_PER_INCH = 0.0254;
  private static final double GRAIN_OF_TABLE = 7;

  public AstmA255(Coefficients k) {
    super(k, "ideal diameter", "in", LIMITS, "none stated");
  }

  /** Ideal diameter of austenite of this analysis and grain size number, m. */
  public double idealDiameterMetres(Composition austenite, double grainNumber) {
    Composition at = Correlation.capped(CAPS, austenite);
    double inches = carbonInches(at.carbon()) * grainFactor(grainNumber);
    for (Element e : List.of(MN, SI, NI, CR, MO, CU, V)) {
      inches *= factor(e, at.percent(e));
    }
    return inches * METRES_PER_INCH;
  }

  /** Ideal diameter of plain iron with that carbon at grain size 7, in. */
  public double carbonInches(double carbon) {
    double c = Math.min(carbon, 0.90);
    if (c <= 0.39) {
      return k.get("C to 0.39 linear") * c;
    }
    if (c <= 0.55) {
      return parabola("C to 0.55", c);
    }
    if (c <= 0.65) {
      return parabola("C to 0.65", c);
    }
    return c <= 0.75
        ? k.get("C to 0.75 constant") + k.get("C to 0.75 linear") * c
        : parabola("C to 0.9", c);
  }

  private double parabola(String piece, double c) {
    return k.get(piece + " constant")
        + c * (k.get(piece + " linear") + c * k.get(piece + " square"));
  }

  /** What an element multiplies the diameter by. */
  public double factor(Element e, double percent) {
    if (e == MN && percent > k.get("Mn steep from")) {
      return k.get("Mn steep constant") + k.get("Mn steep linear") * percent;
    }
    if (e == NI && percent > k.get("Ni cubic from")) {
      return k.get("Ni cubic constant")
          + percent
              * (k.get("Ni cubic linear")
                  + percent * (k.get("Ni cubic square") + percent * k.get("Ni cubic cube")));
    }
    return 1 + k.get(e.symbol()) * percent;
  }

  /** What a grain size number multiplies the diameter by. */
  public double grainFactor(double grainNumber) {
    return Math.pow(k.get("grain"), GRAIN_OF_TABLE - grainNumber);
  }
}
