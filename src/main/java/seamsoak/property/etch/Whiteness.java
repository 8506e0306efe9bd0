package seamsoak.property.etch;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;

/**
 * How white etched metal looks, up to a constant: a difference of 1 between a broad line and what
 * lies about it just shows.
 *
 * <p>w = x / 0.05 - min(C, 0.80) / 0.3 after a cooling; w = x / 0.05 - HV / 50 hardened
 *
 * <p>x share of free ferrite, C in wt%, HV of martensite of the carbon that is dissolved. The
 * carbon term stands for pearlite, lighter and finer with less carbon: it takes away a hard zero
 * and makes no line by itself.
 *
 * <p>Between two layers a difference of 4 counts as strong: a picture is then as white as it gets.
 *
 * <p>Judgement: 0.02 to 0.10 of ferrite, 0.2 to 0.4 wt% and 30 to 80 HV would do as well.
 *
 * <p>Range: below the eutectoid and above it. Stated error: none.
 */
public final class Whiteness extends PublishedFormula {
  private final double ferrite = k.get("ferrite");
  private final double carbon = k.get("carbon");
  private final double mostCarbon = k.get("carbon at most");
  private final double hardness = k.get("hardness");

  public Whiteness(Coefficients k) {
    super(k, "whiteness after etching", "1", List.of(), "none, judgement");
  }

  /** A difference that counts as strong between broad layers. */
  public double strong() {
    return k.get("strong");
  }

  /** Of ferrite and pearlite. */
  public double cooled(double ferriteShare, double carbonPct) {
    return ferriteShare / ferrite - Math.min(mostCarbon, carbonPct) / carbon;
  }

  /** Of martensite, with what ferrite the heat left. */
  public double hardened(double ferriteShare, double martensiteVickers) {
    return ferriteShare / ferrite - martensiteVickers / hardness;
  }
}
