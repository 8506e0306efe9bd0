package seamsoak.property.hardening;

import java.util.List;
import java.util.Optional;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.steel.Hardenability;

/**
 * How long austenite held near 650 C takes to change to pearlite throughout, by how deep its grade
 * hardens.
 *
 * <p>In h: one figure for deep, one for medium-deep and one for all that harden less deeply.
 *
 * <p>ASM Handbook 4, isothermal annealing of alloy steels, from memory: 4340 at 650 C, 5160 and
 * 6150 at 675 C; a sheet of 5160 was read. What hardens less deeply is our judgement.
 *
 * <p>Range: low-alloy steel. What hardens in air does not change in a usable time; a grade that is
 * not judged counts as deep.
 *
 * <p>Stated error: none.
 */
public final class PearliteTime extends PublishedFormula {
  PearliteTime(Coefficients k) {
    super(k, "time at 650 C until austenite is pearlite", "h", List.of(), "none");
  }

  /** Hours until all has changed; for steel that hardens in air those of deep-hardening steel. */
  public double hours(Optional<Hardenability> depth) {
    return k.get(
        switch (depth.orElse(Hardenability.DEEP)) {
          case NONE, VERY_SHALLOW, SHALLOW, SHALLOW_MEDIUM, MEDIUM -> "less deep";
          case MEDIUM_DEEP -> "medium-deep";
          case DEEP, AIR -> "deep";
        });
  }

  /** Whether it may not have changed even then. */
  public static boolean mayNot(Optional<Hardenability> depth) {
    return depth.filter(d -> d == Hardenability.AIR).isPresent();
  }
}
