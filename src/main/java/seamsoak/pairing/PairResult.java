package seamsoak.pairing;

import java.util.List;
import java.util.Optional;

/**
 * Whether two steels go together.
 *
 * @param first the one
 * @param second the other
 * @param rating the worst of all checks
 * @param checks the weightiest first
 * @param same whether both are one and the same steel
 */
public record PairResult(
    PairSteel first, PairSteel second, Rating rating, List<Finding> checks, boolean same) {
  public PairResult {
    checks = List.copyOf(checks);
  }

  /** The check that decides, where the pair does not simply fit. */
  public Optional<Finding> deciding() {
    return checks.stream().filter(c -> c.rating() != Rating.FITS).findFirst();
  }

  /** The finding of a check, if it applies. */
  public Optional<Finding> check(CheckName name) {
    return checks.stream().filter(c -> c.check() == name).findFirst();
  }
}
