package seamsoak.property.correlation;

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
 */
public final class Coefficients {
  private final String correlation;

  /** The first of its rows: where it stands is worked out only for who must be told. */
  private final CsvTable.Row first;

  private final Map<String, Double> values;
  private final Origin origin;

  Coefficients(String correlation, CsvTable.Row first, Map<String, Double> values, Origin origin) {
    this.correlation = correlation;
    this.first = first;
    this.values = Map.copyOf(values);
    this.origin = origin;
  }

  /** What the correlation says about itself; its standing is that of its rows together. */
  public Correlation describe(String gives, String unit, List<Range> validity, String statedError) {
    return new Correlation(
        correlation,
        gives,
        unit,
        origin.source(),
        origin.standing(),
        validity,
        statedError,
        origin.terms(),
        origin.notes());
  }

  /** Key of the source. */
  public String source() {
    return origin.source();
  }

  /** The coefficient of a term; {@link Fault} when the table lacks it. */
  public double get(String term) {
    Double value = values.get(term);
    if (value == null) {
      throw new Fault(
          first.place(),
          "correlation " + correlation + " has no term " + term,
          "it needs that row");
    }
    return value;
  }

  /** Sum of coefficient times weight percent over the elements named. */
  public double linear(Composition c, Element... elements) {
    double sum = 0;
    for (Element e : elements) {
      sum += get(e.symbol()) * c.percent(e);
    }
    return sum;
  }

  /** Sum of coefficient times {@code first} times {@code second}, a square when they are one. */
  public double product(Composition c, Element first, Element... seconds) {
    double sum = 0;
    for (Element second : seconds) {
      String term =
          first == second ? first.symbol() + "^2" : first.symbol() + "*" + second.symbol();
      sum += get(term) * c.percent(first) * c.percent(second);
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
    values.forEach(
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
