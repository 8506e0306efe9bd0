package seamsoak.property.hardening;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.property.phase.PhaseLines;
import seamsoak.source.Estimate;

/**
 * Heat at which a steel lets go of the magnet as it gets hotter.
 *
 * <p>T = min(770, Ac3): ferrite loses its magnetism at the Curie point; where the last ferrite is
 * gone before, with it. Austenite is never magnetic, cementite not above 215 C.
 *
 * <p>T in C; Ac3 of {@link PhaseLines} for the carbon there.
 *
 * <p>Curie point of iron, read; the rest follows from it.
 *
 * <p>Range: low alloy steel. Alloying moves the Curie point of ferrite by a few degrees, left out.
 *
 * <p>Band: from Ac1, where most of a high-carbon steel changes, to 30 C above Ac3 (at most 770),
 * which a forge's fast rise delays, from memory.
 */
public final class MagnetRule extends PublishedFormula {

  public MagnetRule(Coefficients k) {
    super(k, "heat at which the magnet lets go", "C", List.of(), "Ac1 to 30 C above Ac3");
  }

  /** The temperature in C with its band, for a steel with that much carbon. */
  public Estimate celsius(PhaseLines lines, double carbonPct) {
    double curie = k.get("Curie point");
    double ac3 = lines.ac3Celsius(carbonPct);
    return new Estimate(
        Math.min(curie, ac3),
        Math.min(curie, lines.a1Celsius()),
        Math.min(curie, ac3 + k.get("delay")),
        k.source(),
        List.of());
  }
}
