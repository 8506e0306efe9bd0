package seamsoak.property.phase;

import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * The metal atoms of a steel, carbon left out: what share of them each element has, and what they
 * weigh. Carbon is then counted per metal atom, so that it does not change what it is counted
 * against. Phosphorus, sulfur, copper and aluminum count as iron (they are residuals here).
 */
public final class MetalLattice {
  private static final Element[] ALLOYING = {
    Element.SI, Element.MN, Element.CR, Element.NI, Element.MO, Element.V, Element.W
  };

  private final double[] share;
  private final double iron;
  private final double meanMass;

  private MetalLattice(double[] share, double iron, double meanMass) {
    this.share = share;
    this.iron = iron;
    this.meanMass = meanMass;
  }

  public static MetalLattice of(Composition c) {
    double[] share = new double[Element.values().length];
    double weight = 0;
    double atoms = 0;
    for (Element e : ALLOYING) {
      share[e.ordinal()] = c.percent(e) / e.mass();
      weight += c.percent(e);
      atoms += share[e.ordinal()];
    }
    double iron = Math.max(0, 100 - c.carbon() - weight) / Element.IRON_MASS;
    atoms += iron;
    double mass = iron / atoms * Element.IRON_MASS;
    for (Element e : ALLOYING) {
      share[e.ordinal()] /= atoms;
      mass += share[e.ordinal()] * e.mass();
    }
    return new MetalLattice(share, iron / atoms, mass);
  }

  /** Atoms of an element per metal atom. */
  public double share(Element e) {
    return share[e.ordinal()];
  }

  /** Atoms of iron per metal atom. */
  public double iron() {
    return iron;
  }

  /** Carbon atoms per metal atom for a weight percent of carbon. */
  public double ratio(double carbonPct) {
    return carbonPct / Element.C.mass() * meanMass / (100 - carbonPct);
  }

  /** Weight percent of carbon for carbon atoms per metal atom. */
  public double percent(double ratio) {
    double carbon = Element.C.mass() * ratio;
    return 100 * carbon / (carbon + meanMass);
  }
}
