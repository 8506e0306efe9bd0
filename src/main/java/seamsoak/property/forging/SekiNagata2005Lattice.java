package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Element;

/**
 * Lattice of iron: how large the cell of ferrite and of austenite is.
 *
 * <p>ferrite a = 0.2860 + 2.059e-6 T + 1.602e-9 T^2; austenite a = 0.35519 + 8.1593e-6 T +
 * 1.7341e-3 C
 *
 * <p>a in nm, T in K, C in wt%. The cell of ferrite holds two atoms of iron, that of austenite
 * four.
 *
 * <p>I. Seki, K. Nagata, ISIJ Int. 45 (2005) 1789-1794, abstract.
 *
 * <p>Range: ferrite 295 to 1183 K, austenite 1183 to 1550 K (with carbon from 1452 K, to 3.35 wt%).
 * Below that the austenite's line goes on straight, which is what austenite does on cooling before
 * it transforms.
 *
 * <p>Stated error: not at hand. At 1185 K iron shrinks by 1.13 % of its volume, as by Lu 2005.
 */
public final class SekiNagata2005Lattice extends PublishedFormula {
  private static final double AVOGADRO = 6.02214076e23;
  private static final double FERRITE_ATOMS = 2;
  private static final double AUSTENITE_ATOMS = 4;

  public SekiNagata2005Lattice(Coefficients k) {
    super(
        k,
        "lattice of ferrite and austenite",
        "nm",
        List.of(Correlation.range(Element.C, 0, 3.35), Correlation.celsiusRange(20, 1550 - 273)),
        "not at hand");
  }

  /** Edge of the ferrite cell, nm. */
  public double ferriteNanometres(double kelvin) {
    return k.get("ferrite constant")
        + kelvin * (k.get("ferrite linear") + kelvin * k.get("ferrite square"));
  }

  /** Edge of the austenite cell, nm. */
  public double austeniteNanometres(double kelvin, double carbonPct) {
    return k.get("austenite constant")
        + k.get("austenite linear") * kelvin
        + k.get("austenite C") * carbonPct;
  }

  /** Volume of ferrite per mole of iron, m3/mol. */
  public double ferriteMolarVolume(double kelvin) {
    return molar(ferriteNanometres(kelvin), FERRITE_ATOMS);
  }

  /** Volume of austenite per mole of iron, m3/mol. */
  public double austeniteMolarVolume(double kelvin, double carbonPct) {
    return molar(austeniteNanometres(kelvin, carbonPct), AUSTENITE_ATOMS);
  }

  private static double molar(double nanometres, double atoms) {
    return AVOGADRO * Math.pow(1e-9 * nanometres, 3) / atoms;
  }
}
