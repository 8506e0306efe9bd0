package seamsoak.property.correlation;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.data.CsvTable;
import seamsoak.data.Fault;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * A published regression, all of it out of two tables: its terms are rows of {@code
 * correlations.csv}, what else the source says is its row of {@code regressions.csv}. A term is
 *
 * <ul>
 *   <li>{@code constant}
 *   <li>an element ({@code Mn}), a product ({@code C*Mn}) or a square ({@code C^2})
 *   <li>{@code sqrt(C)}
 *   <li>{@code carbon amplitude}, which multiplies 1 - exp(-{@code carbon rate} C)
 * </ul>
 */
public final class Regression implements CriticalTemperature {
  private static final Pattern PRODUCT =
      Pattern.compile("([A-Z][a-z]?)(?:\\*([A-Z][a-z]?)|(\\^2))?");

  private static final String SHIFT = "alloy shift of ";

  /** What a formula gives, as a point of a temperature scale or as degrees to add. */
  private enum Scale {
    C(1, 0),
    F(1.8, 32),
    K(1, -ABSOLUTE_ZERO),
    C_ADDED(1, 0);

    private final double degreesPerCelsius;
    private final double zeroCelsius;

    Scale(double degreesPerCelsius, double zeroCelsius) {
      this.degreesPerCelsius = degreesPerCelsius;
      this.zeroCelsius = zeroCelsius;
    }
  }

  /**
   * @param written as in print, after its coefficient
   * @param alloying whether it names an element besides carbon
   */
  private record Term(
      double coefficient, String written, boolean alloying, ToDoubleFunction<Composition> of) {
    double value(Composition c) {
      return coefficient * of.applyAsDouble(c);
    }

    /** With its sign before it. */
    String signed() {
      return (coefficient < 0 ? " - " : " + ") + number(Math.abs(coefficient)) + " " + written;
    }
  }

  private final Scale scale;
  private final double constant;

  /** The root of carbon and what levels off with it: summed first, with the constant. */
  private final List<Term> bent;

  private final List<Term> others;
  private final Map<Element, Double> caps;
  private final Correlation correlation;
  private final Correlation alloyShift;

  Regression(Coefficients k, CsvTable.Row row) {
    this.scale = scale(row);
    this.constant = scale == Scale.C_ADDED ? 0 : k.get("constant");
    this.bent = new ArrayList<>();
    this.others = new ArrayList<>();
    k.terms().forEach((term, value) -> add(k, term, value));
    Ranges ranges = Ranges.of(row);
    this.caps = ranges.caps();
    String gives = (scale == Scale.C_ADDED ? SHIFT : "") + row.text("gives");
    List<String> notes =
        Stream.of(formula(gives, row.text("not_named")), row.text("read"), row.text("note"))
            .filter(n -> !n.isEmpty())
            .toList();
    this.correlation = k.describe(gives, "C", ranges.all(), row.text("error"), notes);
    this.alloyShift =
        scale == Scale.C_ADDED
            ? correlation
            : k.describe(SHIFT + gives, "C", ranges.alloying(), row.text("error"), notes);
  }

  private static Scale scale(CsvTable.Row row) {
    String unit = row.text("unit");
    return Stream.of(Scale.values())
        .filter(s -> s.name().replace('_', ' ').equalsIgnoreCase(unit))
        .findFirst()
        .orElseThrow(
            () ->
                new Fault(
                    row.place("unit"), "unit " + Fault.shown(unit), "give C, F, K or C added"));
  }

  private void add(Coefficients k, String term, double value) {
    switch (term) {
      case "constant", "carbon rate" -> {}
      case "sqrt(C)" -> bent.add(new Term(value, term, false, c -> Math.sqrt(c.carbon())));
      case "carbon amplitude" -> {
        double rate = k.get("carbon rate");
        String written = "(1 - exp(-" + number(rate) + " C))";
        bent.add(new Term(value, written, false, c -> -Math.expm1(-rate * c.carbon())));
      }
      default -> others.add(product(k, term, value));
    }
  }

  private static Term product(Coefficients k, String term, double value) {
    Matcher m = PRODUCT.matcher(term);
    if (!m.matches()) {
      throw k.unknown(term);
    }
    Element one = element(k, term, m.group(1));
    if (m.group(2) == null && m.group(3) == null) {
      return new Term(value, term, one != Element.C, c -> c.percent(one));
    }
    Element other = m.group(2) == null ? one : element(k, term, m.group(2));
    return new Term(
        value,
        term.replace('*', ' '),
        one != Element.C || other != Element.C,
        c -> c.percent(one) * c.percent(other));
  }

  private static Element element(Coefficients k, String term, String symbol) {
    return Element.of(symbol).orElseThrow(() -> k.unknown(term));
  }

  private String formula(String gives, String notNamed) {
    String sum =
        Stream.concat(bent.stream(), others.stream())
            .map(Term::signed)
            .collect(Collectors.joining());
    return gives
        + " = "
        + (scale == Scale.C_ADDED ? sum.substring(3) : number(constant) + sum)
        + (scale == Scale.F || scale == Scale.K ? " in " + scale + ", converted to C" : "")
        + (notNamed.isEmpty() ? "" : " (and " + notNamed + ", which an analysis does not name)");
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  @Override
  public Correlation correlation() {
    return correlation;
  }

  /** What the alloy terms by themselves say; they hold whatever the carbon is. */
  public Correlation alloyShift() {
    return alloyShift;
  }

  @Override
  public double celsius(Composition c) {
    Composition at = capped(c);
    double sum = constant;
    for (Term t : bent) {
      sum += t.value(at);
    }
    double more = 0;
    for (Term t : others) {
      more += t.value(at);
    }
    return Math.max(ABSOLUTE_ZERO, (sum + more - scale.zeroCelsius) / scale.degreesPerCelsius);
  }

  /** What the alloying elements add to a line of plain iron and carbon, in C. */
  public double alloyShiftCelsius(Composition c) {
    return alloyShiftCelsius(c, c.carbon());
  }

  /** The same for the line at a carbon content, whatever carbon the analysis names. */
  public double alloyShiftCelsius(Composition c, double carbonPct) {
    Composition at = capped(c).with(Element.C, carbonPct);
    double sum = 0;
    for (Term t : others) {
      if (t.alloying) {
        sum += t.value(at);
      }
    }
    return sum / scale.degreesPerCelsius;
  }

  private Composition capped(Composition c) {
    Composition capped = c;
    for (Map.Entry<Element, Double> cap : caps.entrySet()) {
      capped = capped.atMost(cap.getKey(), cap.getValue());
    }
    return capped;
  }
}
