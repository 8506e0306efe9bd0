package seamsoak.state;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Sight;

/**
 * How white each metal of a piece etches in one state, by its carbon. A line shows in that of the
 * steels at it in which it shows most.
 *
 * @param byMetal by the name of a metal on the lines, the whiteness of each steel that it stands
 *     for
 */
public record Etch(Map<String, List<DoubleUnaryOperator>> byMetal) {
  /** K of a seam as an eye takes it in: the line shows from 1 on. */
  public double contrast(Metal at, Sight sight) {
    double most = 0;
    for (DoubleUnaryOperator whiteness : of(at)) {
      most = Math.max(most, sight.over(whiteness));
    }
    return most;
  }

  /** K where two seams cross. */
  double crossing(Metal at, Sight first, Sight second, double secondCorePct) {
    double most = 0;
    for (DoubleUnaryOperator whiteness : of(at)) {
      most = Math.max(most, first.crossing(second, secondCorePct, whiteness));
    }
    return most;
  }

  private List<DoubleUnaryOperator> of(Metal metal) {
    List<DoubleUnaryOperator> known = byMetal.get(metal.name());
    if (known == null) {
      throw new IllegalStateException("nothing known of how " + metal.name() + " etches");
    }
    return known;
  }
}
