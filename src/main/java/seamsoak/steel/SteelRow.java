package seamsoak.steel;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import seamsoak.data.CsvTable;
import seamsoak.data.Fault;
import seamsoak.unit.Printable;

/** Makes a steel of one line of {@code steels.csv} and refuses a line that contradicts itself. */
final class SteelRow {
  private static final List<Element> FULLY_LIMITED =
      List.of(
          Element.C,
          Element.MN,
          Element.SI,
          Element.CR,
          Element.NI,
          Element.MO,
          Element.V,
          Element.W);
  private static final List<Element> ONLY_MAXIMUM = List.of(Element.P, Element.S, Element.CU);

  /** No steel has a figure beyond these, C; Ms lies below zero in some. */
  private static final double COLDEST = -250;

  private static final double HOTTEST = 1600;

  private final CsvTable.Row row;
  private final Map<Element, Double> typical = new EnumMap<>(Element.class);
  private final Map<Element, Limits> limits = new EnumMap<>(Element.class);

  private final List<Dispute> disputes;
  private final Optional<TemperatureRange> bladeTemper;

  private SteelRow(
      CsvTable.Row row, List<Dispute> disputes, Optional<TemperatureRange> bladeTemper) {
    this.row = row;
    this.disputes = disputes;
    this.bladeTemper = bladeTemper;
  }

  /**
   * Of a line.
   *
   * @param bladeTemper range for blades, where that of the line is of springs
   */
  static Steel read(
      CsvTable.Row row, List<Dispute> disputes, Optional<TemperatureRange> bladeTemper) {
    return new SteelRow(row, disputes, bladeTemper).steel();
  }

  private Steel steel() {
    String id = oneLine("id");
    FULLY_LIMITED.forEach(this::readElement);
    for (Element e : ONLY_MAXIMUM) {
      limits.put(e, new Limits(OptionalDouble.empty(), row.number(e.symbol() + "_max_pct")));
    }
    SteelTable.TEMPERATURES.forEach(this::possible);
    inOrder("Ac1_C", "Ac3_or_Accm_C");
    return new Steel(
        id,
        id,
        oneLine("designation"),
        Stream.of("aliases", "uns", "w_nr").flatMap(c -> row.list(c).stream()).toList(),
        row.text("category"),
        analysis(),
        limits,
        heatTreatment(),
        row.number("Ac1_C"),
        row.number("Ac3_or_Accm_C"),
        row.number("Ms_C"),
        row.number("CTE_um_per_m_K"),
        row.text("role"),
        hardenability(),
        row.list("standards"),
        row.list("near"),
        row.text("notes"),
        disputes,
        Optional.empty());
  }

  private void readElement(Element e) {
    String min = e.symbol() + "_min_pct";
    String typ = e.symbol() + "_typ_pct";
    String max = e.symbol() + "_max_pct";
    inOrder(min, typ);
    inOrder(typ, max);
    inOrder(min, max);
    Limits found = new Limits(row.number(min), row.number(max));
    OptionalDouble typical = row.number(typ);
    if (found.min().orElse(0) > 0 && typical.isEmpty()) {
      throw new Fault(
          row.place(typ), typ + " is blank beside a lower limit", "give a typical figure");
    }
    limits.put(e, found);
    // A blank typical figure means a residual element: modeled as none.
    typical.ifPresent(percent -> this.typical.put(e, percent));
  }

  private Composition analysis() {
    if (row.required("C_typ_pct") > AnalysisText.CEMENTITE_CARBON) {
      throw new Fault(
          row.place("C_typ_pct"),
          "C_typ_pct " + row.text("C_typ_pct") + " is more than cementite holds",
          "give weight percents");
    }
    try {
      return Composition.of(typical);
    } catch (IllegalArgumentException e) {
      throw new Fault(row.place("C_typ_pct"), e.getMessage(), "give weight percents");
    }
  }

  private HeatTreatment heatTreatment() {
    inOrder("forge_stop_C", "forge_start_C");
    return new HeatTreatment(
        row.number("forge_start_C"),
        row.number("forge_stop_C"),
        range("normalize"),
        range("anneal"),
        row.number("anneal_rate_C_per_h"),
        range("harden"),
        leastSoakMinutes(),
        words("quench").map(this::quench),
        bladeTemper.or(() -> range("temper")),
        bladeTemper.flatMap(b -> range("temper")));
  }

  private SheetQuench quench(String words) {
    return SheetQuench.parse(words)
        .orElseThrow(
            () ->
                new Fault(
                    row.place("quench"),
                    "'" + Fault.shown(words) + "' is no quench",
                    "write such as oil, fast oil or water, oil below 8 mm; water from 8 mm, or does"
                        + " not harden"));
  }

  /** Of a number or of a range such as {@code 10-30}. */
  private OptionalDouble leastSoakMinutes() {
    String printed = row.text("soak_minutes");
    try {
      return printed.isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(Double.parseDouble(printed.split("-")[0]));
    } catch (NumberFormatException e) {
      throw new Fault(
          row.place("soak_minutes"),
          "'" + Fault.shown(printed) + "' is no time",
          "give minutes, such as 30 or 10-30");
    }
  }

  private Optional<TemperatureRange> range(String name) {
    String low = name + "_min_C";
    String high = name + "_max_C";
    inOrder(low, high);
    OptionalDouble lowC = row.number(low);
    OptionalDouble highC = row.number(high);
    if (lowC.isPresent() != highC.isPresent()) {
      String blank = lowC.isEmpty() ? low : high;
      throw new Fault(
          row.place(blank), blank + " is blank", "a range has both ends, equal if need be");
    }
    return lowC.isEmpty()
        ? Optional.empty()
        : Optional.of(new TemperatureRange(lowC.getAsDouble(), highC.getAsDouble()));
  }

  private Optional<Hardenability> hardenability() {
    String words = row.text("hardenability");
    try {
      return words.isEmpty() ? Optional.empty() : Optional.of(Hardenability.of(words));
    } catch (IllegalArgumentException e) {
      throw new Fault(row.place("hardenability"), e.getMessage(), "or leave it blank");
    }
  }

  private Optional<String> words(String column) {
    return Optional.of(row.text(column)).filter(text -> !text.isEmpty());
  }

  private String filled(String column) {
    return words(column)
        .orElseThrow(
            () -> new Fault(row.place(column), "column " + column + " is blank", "name the steel"));
  }

  private String oneLine(String column) {
    String text = filled(column);
    if (!Printable.is(text)) {
      throw new Fault(
          row.place(column), "'" + Fault.shown(text) + "' has a line break", "a name is one line");
    }
    return text;
  }

  private void possible(String column) {
    OptionalDouble celsius = row.number(column);
    if (celsius.isPresent()
        && (celsius.getAsDouble() < COLDEST || celsius.getAsDouble() > HOTTEST)) {
      throw new Fault(
          row.place(column),
          column + " " + row.text(column) + " is no temperature of a steel",
          "it lies between -250 and 1600 C");
    }
  }

  private void inOrder(String lower, String upper) {
    OptionalDouble low = row.number(lower);
    OptionalDouble high = row.number(upper);
    if (low.isPresent() && high.isPresent() && low.getAsDouble() > high.getAsDouble()) {
      throw new Fault(
          row.place(lower),
          lower + " " + row.text(lower) + " is above " + upper + " " + row.text(upper),
          "it may not be");
    }
  }
}
