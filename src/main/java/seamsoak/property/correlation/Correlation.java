package seamsoak.property.correlation;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import seamsoak.source.Exceeded;
import seamsoak.source.Range;
import seamsoak.source.Standing;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * What a published correlation says about itself.
 *
 * @param name its name, author and year, as in the table of coefficients
 * @param gives the quantity it gives
 * @param unit unit of that quantity
 * @param sourceKey key of its source, or several with {@link #BETWEEN_SOURCES} between
 * @param standing how its numbers reached us
 * @param validity ranges within which the source vouches for it; quantities are element symbols or
 *     {@code temperature}
 * @param statedError the error the source states, in its words, or that it states none
 * @param terms which of its coefficients have which standing; empty where they stand in the code
 * @param notes its formula where that is made from the table, and what the tables say besides
 */
public record Correlation(
    String name,
    String gives,
    String unit,
    String sourceKey,
    Standing standing,
    List<Range> validity,
    String statedError,
    Map<Standing, List<String>> terms,
    List<String> notes)
    implements Published {
  /** Stands between the keys of several sources. */
  public static final String BETWEEN_SOURCES = ", ";

  private static final String TEMPERATURE = "temperature";

  public Correlation {
    validity = List.copyOf(validity);
    terms = Collections.unmodifiableMap(terms);
    notes = List.copyOf(notes);
  }

  /** One whose coefficients stand in the code and are all equally well known. */
  public Correlation(
      String name,
      String gives,
      String unit,
      String sourceKey,
      Standing standing,
      List<Range> validity,
      String statedError) {
    this(name, gives, unit, sourceKey, standing, validity, statedError, Map.of(), List.of());
  }

  /** A range of an element's content, in wt%. */
  public static Range range(Element e, double low, double high) {
    return new Range(e.symbol(), "wt%", low, high);
  }

  /** A range of temperature, in C. */
  public static Range celsiusRange(double low, double high) {
    return new Range(TEMPERATURE, "C", low, high);
  }

  @Override
  public Correlation correlation() {
    return this;
  }

  @Override
  public List<Exceeded> exceeded(Composition c) {
    return Arrays.stream(Element.values())
        .flatMap(e -> exceeded(e.symbol(), c.percent(e)))
        .toList();
  }

  /** The range of temperature that a temperature leaves, empty when it holds. */
  public List<Exceeded> exceeded(double celsius) {
    return exceeded(TEMPERATURE, celsius).toList();
  }

  /** The ranges of composition and temperature left. */
  public List<Exceeded> exceeded(Composition c, double celsius) {
    return Stream.concat(exceeded(c).stream(), exceeded(TEMPERATURE, celsius)).toList();
  }

  private Stream<Exceeded> exceeded(String quantity, double value) {
    return validity.stream()
        .filter(r -> r.quantity().equals(quantity) && !r.holds(value))
        .map(r -> new Exceeded(name, r, value));
  }

  /**
   * The analysis with each element brought down to the upper end of its range: what a correlation
   * evaluates that would run into nonsense beyond. The remark about it comes from {@link
   * #exceeded(Composition)} of the analysis as it was.
   */
  public static Composition capped(List<Range> ranges, Composition c) {
    Composition capped = c;
    for (Range r : ranges) {
      capped = capped.atMost(Element.of(r.quantity()).orElseThrow(), r.high());
    }
    return capped;
  }
}
