package seamsoak.steel;

import java.util.List;
import java.util.OptionalDouble;
import seamsoak.source.Standing;

/**
 * What is known of stock that was found and not bought by its grade.
 *
 * @param id what it is called
 * @param mayBe grades it may be of, the likeliest first; that one is reckoned with
 * @param test what to do before any of it is used, a sentence
 * @param standing how well the grades are known
 * @param source key of their source
 */
public record UnknownMake(
    String id, List<Steel> mayBe, String test, Standing standing, String source) {
  public UnknownMake {
    mayBe = List.copyOf(mayBe);
  }

  public Steel likeliest() {
    return mayBe.get(0);
  }

  public List<String> grades() {
    return mayBe.stream().map(Steel::id).toList();
  }

  /** From the least to the most that any of the grades may hold of an element. */
  public Limits limits(Element e) {
    return new Limits(
        mayBe.stream().allMatch(s -> s.limits(e).min().isPresent())
            ? mayBe.stream().mapToDouble(s -> s.limits(e).min().getAsDouble()).min()
            : OptionalDouble.empty(),
        mayBe.stream().mapToDouble(s -> s.limits(e).max().orElse(s.analysis().percent(e))).max());
  }
}
