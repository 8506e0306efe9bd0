package seamsoak.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.trace.Trace;

/**
 * What an answer rests on, in words. Temperatures are in C and contents in wt%, as the sources have
 * them.
 */
public record SourcesText(Trace trace) {
  /** What stands below an answer; nothing when nobody asked for it. */
  public String page() {
    Chapter chapter =
        Chapter.of("sources", "Sources (temperatures in C, contents in wt%)")
            .terms(trace.entries().stream().map(SourcesText::term).toList());
    return chapter.parts().isEmpty() ? "" : "\n" + Chapter.page(List.of(chapter));
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
    String from =
        e.citation().equalsIgnoreCase(e.standing())
            ? ""
            : e.citation() + (e.source().isEmpty() ? "" : " [" + e.source() + "]") + "; ";
    String terms =
        list(
            " (",
            "; ",
            e.terms().entrySet().stream()
                .map(t -> t.getKey() + ": " + String.join(", ", t.getValue())));
    String range =
        list(
            "Range: ",
            ", ",
            e.ranges().stream().map(r -> r.quantity() + " " + between(r.low(), r.high())));
    String exceeded =
        list(
            "Exceeded: ",
            ", ",
            e.exceeded().stream().map(o -> o.by() + " " + o.quantity() + " " + number(o.value())));
    Stream<String> error =
        Stream.of(range, e.unit().isEmpty() ? "" : "Error: " + e.statedError())
            .filter(said -> !said.isEmpty());
    return new Part.Term(
        e.name() + ": " + e.gives() + (e.unit().isEmpty() ? "" : ", " + e.unit()),
        Stream.of(
                from + e.standing() + terms + (terms.isEmpty() ? "" : ")"),
                list("", ". ", error),
                exceeded,
                list("Notes: ", "; ", e.notes().stream()))
            .filter(said -> !said.isEmpty())
            .map(said -> said + ".")
            .toList());
  }

  private static String list(String head, String between, Stream<String> items) {
    String all = items.collect(Collectors.joining(between));
    return all.isEmpty() ? "" : head + all;
  }

  private static String between(double low, double high) {
    return number(low) + " to " + number(high);
  }

  private static String number(double value) {
    String digits = String.format(Locale.ROOT, "%.4g", value);
    return new java.math.BigDecimal(digits).stripTrailingZeros().toPlainString();
  }
}
