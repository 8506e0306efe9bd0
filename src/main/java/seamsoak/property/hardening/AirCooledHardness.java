package seamsoak.property.hardening;

import java.util.List;
import java.util.Map;
import seamsoak.heat.Section;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Estimate;
import seamsoak.source.Range;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Hardness of a section that cooled in still air to ferrite and pearlite.
 *
 * <p>HV = HV(bar) q^0.09; q = d (1 + t / w) / (2 t)
 *
 * <p>HV(bar) that of {@link NormalizedHardness}, made Vickers by {@link Iso18265Brinell}; q how
 * many times as fast as that bar the section cools: in still air the rate goes as face per volume,
 * so nothing of the air itself is left in it; d of the bar, t and w of the section, m.
 *
 * <p>Faster cooling makes finer pearlite. The exponent is our judgement: bars of 1095 from half an
 * inch to four have 0.08, those of 1060 and 1080 less (handbook tables, from memory); a rail steel
 * cooled at 3 C/s more, wire rod of 0.82 % C lies between (abstracts seen, the standard of the rail
 * and the rate of the rod from memory). A measured spacing of 302 nm beside 286 HV and of 205 nm
 * beside 348 HV shows the cause: hardness as the root of the spacing.
 *
 * <p>Range: that of the table; sections of 1 to 100 mm.
 *
 * <p>Band: an exponent of 0.04 to 0.14, and 5 % between melts. Alloying adds to it and is not
 * counted: 0.8 % chromium some 40 HV.
 */
public final class AirCooledHardness extends PublishedFormula {
  private static final double MILLIMETRES = 1e3;

  private final NormalizedHardness normalized;
  private final Iso18265Brinell brinell;

  AirCooledHardness(Coefficients k, NormalizedHardness normalized, Iso18265Brinell brinell) {
    super(
        k,
        "hardness as cooled in air",
        "HV",
        List.of(new Range("section", "mm", 1, 100)),
        "exponent 0.04 to 0.14 and 5 % between melts, judgement");
    this.normalized = normalized;
    this.brinell = brinell;
  }

  /** Vickers hardness with that much carbon. */
  public double vickers(double carbonPct, Section section) {
    return at(carbonPct, section, k.get("exponent"));
  }

  /** That of a bar of the table. */
  public double barVickers(double carbonPct) {
    return brinell.vickers(normalized.brinell(carbonPct));
  }

  /** Hardness of a section with its band. */
  public Estimate estimate(double carbonPct, Section section) {
    double faster = at(carbonPct, section, k.get("exponent high"));
    double slower = at(carbonPct, section, k.get("exponent low"));
    return new Estimate(
        vickers(carbonPct, section),
        Math.min(slower, faster) * (1 - k.get("scatter")),
        Math.max(slower, faster) * (1 + k.get("scatter")),
        k.source(),
        normalized.exceeded(Composition.of(Map.of(Element.C, carbonPct))));
  }

  private double at(double carbonPct, Section section, double exponent) {
    return barVickers(carbonPct) * Math.pow(quicker(section), exponent);
  }

  /** How many times as fast as the bar of the table a section cools. */
  private double quicker(Section section) {
    double bar = k.get("bar") / MILLIMETRES;
    return bar * (1 + section.roundness()) / (2 * section.thicknessMetres());
  }
}
