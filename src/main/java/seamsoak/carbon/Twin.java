package seamsoak.carbon;

import java.util.Optional;
import seamsoak.carbon.StripSolver.Advanced;

/**
 * A strip that is another one but for rounding and for the names of its seams, as it lies or turned
 * end for end: where pieces are laid in a checkerboard the line up is the line across, turned. The
 * same heat makes the same of both.
 *
 * @param turned whether it is that turned end for end
 */
public record Twin(boolean turned) {
  /** Relative: rounding leaves a hundredth of that, a step of the solver errs by far more. */
  private static final double ROUNDING = 1e-11;

  /** How a strip in its edges is a twin of another in its own, if it is. */
  public static Optional<Twin> of(
      Strip it, Edge near, Edge far, Strip other, Edge first, Edge last) {
    if (near.equals(first) && far.equals(last) && alike(it, other, false)) {
      return Optional.of(new Twin(false));
    }
    return near.equals(last) && far.equals(first) && alike(it, other, true)
        ? Optional.of(new Twin(true))
        : Optional.empty();
  }

  private static boolean alike(Strip a, Strip b, boolean turned) {
    int n = a.cells();
    if (n != b.cells() || a.planes().size() != b.planes().size()) {
      return false;
    }
    for (int i = 0; i < n; i++) {
      int k = turned ? n - 1 - i : i;
      if (!near(a.metres(i), b.metres(k))
          || !near(a.ratio(i), b.ratio(k))
          || !a.metal(i).equals(b.metal(k))) {
        return false;
      }
    }
    int seams = a.planes().size();
    for (int i = 0; i < seams; i++) {
      int face = b.planes().get(turned ? seams - 1 - i : i).face();
      if (a.planes().get(i).face() != (turned ? n - face : face)) {
        return false;
      }
    }
    return near(a.scaledMetres(), turned ? b.farScaledMetres() : b.scaledMetres())
        && near(a.farScaledMetres(), turned ? b.scaledMetres() : b.farScaledMetres());
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= ROUNDING * Math.abs(b);
  }

  /**
   * What a heat makes of it that made that of the other one; empty where scale has come through a
   * zone, since the seams there are gone.
   */
  public Optional<Advanced> follows(Strip it, Advanced other) {
    Strip after = turned ? other.strip().reversed() : other.strip();
    if (after.cells() != it.cells()) {
      return Optional.empty();
    }
    return Optional.of(
        new Advanced(
            it.with(
                after.thicknesses(), after.ratios(), after.scaledMetres(), after.farScaledMetres()),
            other.carbonLost(),
            after.scaledMetres() - it.scaledMetres(),
            other.massErrorRelative()));
  }
}
