package seamsoak.pairing;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import seamsoak.steel.Element;
import seamsoak.steel.TemperatureRange;

/**
 * Holds values against limits.
 *
 * @param limits of every check
 */
record Judge(PairLimits limits) {
  /** One value of each steel, rated as the check says. */
  Finding of(
      CheckName check, PairSteel a, PairSteel b, ToDoubleFunction<PairSteel> value, Why why) {
    return values(check, value.applyAsDouble(a), value.applyAsDouble(b), why);
  }

  /** Two values, rated as the check says. */
  Finding values(CheckName check, double first, double second, Why why) {
    return values(check, first, second, check.rated(first, second), why);
  }

  /** Two values and what is rated of them. */
  Finding values(CheckName check, double first, double second, double rated, Why why) {
    PairLimit limit = limits.of(check);
    double gap = Math.abs(first - second);
    Optional<TemperatureRange> none = Optional.empty();
    return new Finding(check, limit, limit.rate(rated), first, second, gap, none, none, rated, why);
  }

  /** Two ranges of temperature, of which the overlap is rated. */
  Finding overlap(CheckName check, TemperatureRange first, TemperatureRange second) {
    return ranges(check, first, second, overlap(first, second), Why.NUMBERS);
  }

  /** Two ranges of temperature, of which the distance is rated. */
  Finding miss(CheckName check, TemperatureRange first, TemperatureRange second, Why why) {
    return ranges(check, first, second, Math.max(0, -overlap(first, second)), why);
  }

  private Finding ranges(
      CheckName check, TemperatureRange first, TemperatureRange second, double rated, Why why) {
    PairLimit limit = limits.of(check);
    return new Finding(
        check,
        limit,
        limit.rate(rated),
        first.middleC(),
        second.middleC(),
        Math.max(0, -overlap(first, second)),
        Optional.of(first),
        Optional.of(second),
        rated,
        why);
  }

  /** What two steels hold of an element; nothing where neither holds any. */
  Stream<Finding> content(CheckName check, Element e, PairSteel a, PairSteel b) {
    return a.percent(e) == 0 && b.percent(e) == 0
        ? Stream.empty()
        : Stream.of(of(check, a, b, s -> s.percent(e), new Why.Content(e)));
  }

  private static double overlap(TemperatureRange first, TemperatureRange second) {
    return Math.min(first.highC(), second.highC()) - Math.max(first.lowC(), second.lowC());
  }
}
