package seamsoak.steel;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/** An analysis in weight percent, the rest iron. Immutable. */
public final class Composition {
  private final EnumMap<Element, Double> percent;

  private Composition(EnumMap<Element, Double> percent) {
    this.percent = percent;
  }

  /** From weight percents; elements left out are zero. */
  public static Composition of(Map<Element, Double> percent) {
    EnumMap<Element, Double> copy = new EnumMap<>(Element.class);
    double sum = 0;
    for (Map.Entry<Element, Double> e : percent.entrySet()) {
      double p = e.getValue();
      if (!(p >= 0 && p <= 100)) {
        throw new IllegalArgumentException(
            e.getKey().symbol() + " " + p + " is not a percentage between 0 and 100");
      }
      sum += p;
      if (p > 0) {
        copy.put(e.getKey(), p);
      }
    }
    if (sum > 100 + 1e-9) {
      throw new IllegalArgumentException("the analysis adds up to " + sum + " %, more than 100 %");
    }
    return new Composition(copy);
  }

  /**
   * Reads an analysis as people write it: {@code C0.84 Mn0.75 Si0.22}, in any case, with spaces,
   * commas, equal signs and percent signs where they like; {@code Fe} alone is pure iron. {@code
   * IllegalArgumentException} with one sentence for anything else.
   */
  public static Composition parse(String text) {
    return AnalysisText.parse(text);
  }

  /** The analysis written out so that {@link #parse} reads the same back. */
  public String format() {
    return AnalysisText.format(this);
  }

  /** Weight percent of an element, 0 when it is not named. */
  public double percent(Element e) {
    return percent.getOrDefault(e, 0.0);
  }

  /** The elements it names, in the order of their table. */
  public Set<Element> elements() {
    return Collections.unmodifiableSet(percent.keySet());
  }

  /** Weight percent of carbon. */
  public double carbon() {
    return percent(Element.C);
  }

  /** The same analysis with another figure for one element. */
  public Composition with(Element e, double weightPercent) {
    EnumMap<Element, Double> copy = new EnumMap<>(percent);
    copy.put(e, weightPercent);
    return of(copy);
  }

  /** The same analysis with no more of one element than that. */
  public Composition atMost(Element e, double weightPercent) {
    return percent(e) > weightPercent ? with(e, weightPercent) : this;
  }

  /** The mean of this and another analysis by share of this one (0 to 1). */
  public Composition mix(Composition other, double share) {
    EnumMap<Element, Double> mean = new EnumMap<>(Element.class);
    for (Element e : Element.values()) {
      mean.put(e, share * percent(e) + (1 - share) * other.percent(e));
    }
    return of(mean);
  }

  /** Weight percent of iron, what the named elements leave. */
  public double iron() {
    double sum = 0;
    for (double p : percent.values()) {
      sum += p;
    }
    return Math.max(0, 100 - sum);
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Composition c && c.percent.equals(percent);
  }

  @Override
  public int hashCode() {
    return percent.hashCode();
  }

  @Override
  public String toString() {
    return format();
  }
}
