package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import seamsoak.trace.Trace;

/**
 * What an answer rests on, in words. Temperatures are in C and contents in wt%, as the sources have
 * them.
 */
public record SourcesText(Trace trace) {
  /** What stands below an answer; nothing when nobody asked for it. */
  public String page() {
    Section section =
        Section.of("sources", "Sources (temperatures in C, contents in wt%)")
            .terms(trace.entries().stream().map(SourcesText::term).toList());
    return section.parts().isEmpty() ? "" : "\n" + Page.of(List.of(section));
  }

  /** Each range that was left, a sentence each. */
  static List<String> exceeded(Trace trace) {
    return trace.entries().stream()
        .flatMap(
            e ->
                e.exceeded().stream()
                    .map(
                        o ->
                            e.name()
                                + ": "
                                + o.by()
                                + " "
                                + o.quantity()
                                + " "
                                + number(o.value())
                                + ", range "
                                + between(o.low(), o.high())))
        .toList();
  }

  /** An entry, and what is said of it. */
  static Part.Term term(Trace.Entry e) {
    List<String> said = new ArrayList<>(List.of(from(e) + standing(e) + "."));
    said.addAll(limits(e));
    return new Part.Term(name(e), said);
  }

  private static String name(Trace.Entry e) {
    return e.name() + ": " + e.gives() + (e.unit().isEmpty() ? "" : ", " + e.unit());
  }

  private static List<String> limits(Trace.Entry e) {
    List<String> said = new ArrayList<>();
    List<String> limits = new ArrayList<>();
    if (!e.ranges().isEmpty()) {
      limits.add(
          "Range: "
              + e.ranges().stream()
                  .map(r -> r.quantity() + " " + between(r.low(), r.high()))
                  .collect(Collectors.joining(", ")));
    }
    if (!e.unit().isEmpty()) {
      limits.add("Error: " + e.statedError());
    }
    if (!limits.isEmpty()) {
      said.add(String.join(". ", limits) + ".");
    }
    if (!e.exceeded().isEmpty()) {
      said.add(
          "Exceeded: "
              + e.exceeded().stream()
                  .map(o -> o.by() + " " + o.quantity() + " " + number(o.value()))
                  .collect(Collectors.joining(", "))
              + ".");
    }
    if (!e.notes().isEmpty()) {
      said.add("Notes: " + String.join("; ", e.notes()) + ".");
    }
    return said;
  }

  private static String from(Trace.Entry e) {
    if (e.citation().equalsIgnoreCase(e.standing())) {
      return "";
    }
    return e.citation() + (e.source().isEmpty() ? "" : " [" + e.source() + "]") + "; ";
  }

  private static String standing(Trace.Entry e) {
    return e.terms().isEmpty()
        ? e.standing()
        : e.standing()
            + " ("
            + e.terms().entrySet().stream()
                .map(t -> t.getKey() + ": " + String.join(", ", t.getValue()))
                .collect(Collectors.joining("; "))
            + ")";
  }

  private static String between(double low, double high) {
    return number(low) + " to " + number(high);
  }

  private static String number(double value) {
    String digits = String.format(Locale.ROOT, "%.4g", value);
    return new java.math.BigDecimal(digits).stripTrailingZeros().toPlainString();
  }
}
