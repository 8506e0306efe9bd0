package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Element;
import seamsoak.unit.Temperature;

/**
 * How long a piece of steel is, hot, against its length at 20 C as ferrite and cementite.
 *
 * <p>dl/l = (V / V20)^(1/3) - 1; ferrite and cementite V = (1 - 3 y) Vf + 4 y Vc; austenite V =
 * Va(C)
 *
 * <p>V volume per mole of iron; y carbon atoms per atom of iron; Vf, Va of {@link
 * SekiNagata2005Lattice}; Vc of cementite per mole of atoms, 5.847e-6 m3/mol at 20 C, growing by
 * 1.8e-5 per K below 480 K and 4.1e-5 per K above.
 *
 * <p>Cementite: Schneider et al. 2007 (volume), I.G. Wood et al., J. Appl. Cryst. 37 (2004) 82
 * (expansion; below 480 K they say less than 1.8e-5).
 *
 * <p>Range: that of the lattice; alloying other than carbon is left out.
 *
 * <p>Stated error: none. Beside handbook means from 20 to 700 C it is 0.3e-6 per K high for pure
 * iron.
 */
public final class LatticeExpansion extends PublishedFormula {
  private static final double ROOM_CELSIUS = 20;
  private static final double IRON_IN_CEMENTITE = 3;
  private static final double ATOMS_IN_CEMENTITE = 4;

  private final SekiNagata2005Lattice lattice;

  LatticeExpansion(Coefficients k, SekiNagata2005Lattice lattice) {
    super(k, "volume and expansion of cementite", "m3/mol and 1/K", List.of(), "none stated");
    this.lattice = lattice;
  }

  /** The lattice behind it. */
  public SekiNagata2005Lattice lattice() {
    return lattice;
  }

  /** Elongation as ferrite and cementite, per length at 20 C. */
  public double ferriteElongation(double celsius, double carbonPct) {
    return elongation(pearlite(celsius, carbonPct), carbonPct);
  }

  /** Elongation as austenite, per length at 20 C as ferrite and cementite. */
  public double austeniteElongation(double celsius, double carbonPct) {
    return elongation(
        lattice.austeniteMolarVolume(celsius + Temperature.ZERO_CELSIUS, carbonPct), carbonPct);
  }

  private double elongation(double volume, double carbonPct) {
    return Math.cbrt(volume / pearlite(ROOM_CELSIUS, carbonPct)) - 1;
  }

  private double pearlite(double celsius, double carbonPct) {
    double kelvin = celsius + Temperature.ZERO_CELSIUS;
    double y = carbonPct / Element.C.mass() / ((100 - carbonPct) / Element.IRON_MASS);
    double inCementite = Math.min(1, IRON_IN_CEMENTITE * y);
    return (1 - inCementite) * lattice.ferriteMolarVolume(kelvin)
        + inCementite / IRON_IN_CEMENTITE * ATOMS_IN_CEMENTITE * cementite(kelvin);
  }

  private double cementite(double kelvin) {
    double room = ROOM_CELSIUS + Temperature.ZERO_CELSIUS;
    double curie = k.get("cementite Curie");
    double below = k.get("cementite expansion below") * (Math.min(kelvin, curie) - room);
    double above = k.get("cementite expansion above") * Math.max(0, kelvin - curie);
    return k.get("cementite volume") * (1 + below + above);
  }
}
