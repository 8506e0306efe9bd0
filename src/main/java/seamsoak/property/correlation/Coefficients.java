package seamsoak.property.correlation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import seamsoak.data.CsvTable;
import seamsoak.data.Fault;
import seamsoak.source.Range;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * The coefficients of one correlation. A term that depends on the analysis is named for what it
 * multiplies: {@code Mn}, {@code sqrt(C)}, {@code Cr^2}, {@code C*Cr}.
 *
 * @param correlation its name
 * @param first of its rows: where it stands is worked out only for who must be told
 * @param terms all of them with their coefficients, in the order of the table
 * @param origin where they come from
 */
public record Coefficients(
    String correlation, CsvTable.Row first, Map<String, Double> terms, Origin origin) {
  public Coefficients {
    terms = Collections.unmodifiableMap(terms);
  }

  /** What the correlation says about itself; its standing is that of its rows together. */
  public Correlation describe(String gives, String unit, List<Range> validity, String statedError) {
    return describe(gives, unit, validity, statedError, List.of());
  }

  /** The same with notes that come before those on single terms. */
  Correlation describe(
      String gives, String unit, List<Range> validity, String statedError, List<String> notes) {
    List<String> all = new ArrayList<>(notes);
    all.addAll(origin.notes());
    return new Correlation(
        correlation,
        gives,
        unit,
        origin.source(),
        origin.standing(),
        validity,
        statedError,
        origin.terms(),
        all);
  }

  /** Key of the source. */
  public String source() {
    return origin.source();
  }

  /** The coefficient of a term; {@link Fault} when the table lacks it. */
  public double get(String term) {
    Double value = terms.get(term);
    if (value == null) {
      throw new Fault(
          first.place(),
          "correlation " + correlation + " has no term " + term,
          "it needs that row");
    }
    return value;
  }

  /** That a term is none that can be reckoned with. */
  Fault unknown(String term) {
    return new Fault(
        first.place(),
        "term " + Fault.shown(term) + " of " + correlation + " is unknown",
        "give constant, Mn, C*Mn, C^2, sqrt(C), carbon amplitude or carbon rate");
  }

  /** Sum of coefficient times weight percent over the elements named. */
  public double linear(Composition c, Element... elements) {
    double sum = 0;
    for (Element e : elements) {
      sum += get(e.symbol()) * c.percent(e);
    }
    return sum;
  }

  /** The carbon term that levels off: amplitude times 1 - exp(-rate C). */
  public double saturation(Composition c) {
    return get("carbon amplitude") * -Math.expm1(-get("carbon rate") * c.carbon());
  }

  /** All coefficients by the number that their term is, for a table of points. */
  public Map<Double, Double> points() {
    Map<Double, Double> points = new HashMap<>();
    terms.forEach(
        (term, value) -> {
          try {
            points.put(Double.valueOf(term), value);
          } catch (NumberFormatException e) {
            throw new Fault(
                first.place(),
                "term " + term + " of " + correlation + " is no number",
                "give a number");
          }
        });
    return points;
  }
}
