package seamsoak.chart.figure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.unit.UnitSystem;

/**
 * Minutes to clear the lines against soak temperature, with what the soak costs below.
 *
 * @param options at least one, by rising temperature
 * @param limits temperatures to stay under
 * @param most the longest soak that the smith allows
 * @param pick the recommended soak
 */
public record SoakFigure(
    String id,
    String title,
    String answer,
    String description,
    UnitSystem units,
    List<Option> options,
    List<Limit> limits,
    OptionalDouble most,
    Optional<Pick> pick)
    implements Figure {

  public SoakFigure {
    Figure.check(id, title, description);
    options = List.copyOf(options);
    limits = List.copyOf(limits);
    most.ifPresent(minutes -> Figure.finite(minutes, "longest soak"));
    if (options.isEmpty()) {
      throw new IllegalArgumentException("a soak chart has at least one option");
    }
    for (int i = 1; i < options.size(); i++) {
      if (options.get(i).celsius() <= options.get(i - 1).celsius()) {
        throw new IllegalArgumentException("soak options must rise in temperature");
      }
    }
  }

  /**
   * One temperature.
   *
   * @param minutes empty when longer than a day; so are low and high, each by itself
   * @param metalLossMm metal lost in that soak, empty if there is none to tell
   * @param grainAstm ASTM grain size number after it
   */
  public record Option(
      double celsius,
      OptionalDouble minutes,
      OptionalDouble minutesLow,
      OptionalDouble minutesHigh,
      OptionalDouble metalLossMm,
      OptionalDouble grainAstm) {
    public Option {
      Figure.finite(celsius, "temperature");
      for (OptionalDouble value :
          List.of(minutes, minutesLow, minutesHigh, metalLossMm, grainAstm)) {
        value.ifPresent(v -> Figure.finite(v, "soak option"));
      }
    }
  }

  /** A temperature limit; {@code stop} marks the one that the program refuses to cross. */
  public record Limit(String label, double celsius, boolean stop) {
    public Limit {
      Figure.finite(celsius, "limit");
    }
  }

  /** The recommended soak; {@code label} says it in words, such as "2010 F (1100 C), 12 min". */
  public record Pick(double celsius, double minutes, String label) {
    public Pick {
      Figure.finite(celsius, "recommended soak");
      Figure.finite(minutes, "recommended soak");
    }
  }
}
