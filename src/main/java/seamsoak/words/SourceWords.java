package seamsoak.words;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.trace.Trace;

/** What an answer rests on. Temperatures are in C and contents in wt%, as the sources have them. */
public final class SourceWords {
  /** How the numbers of a plan come about. */
  public static final String METHOD =
      "Carbon is followed through the whole history by one calculation: from its activity in each"
          + " steel, across seams, layers and faces, heat by heat. The band holds eight of ten cases"
          + " tried. Temperatures below are in C, contents in wt%.";

  private SourceWords() {}

  /** Each range that was left, a sentence each. */
  public static List<String> exceeded(Trace trace) {
    return trace.entries().stream()
        .flatMap(
            e ->
                e.exceeded().stream()
                    .map(o -> e.name() + ": " + left(o) + ", range " + between(o.low(), o.high())))
        .toList();
  }

  private static String left(Trace.Outside o) {
    return o.by() + " " + o.quantity() + " " + number(o.value());
  }

  /** Its name and what it gives. */
  public static String head(Trace.Entry e) {
    return e.name() + ": " + e.gives() + (e.unit().isEmpty() ? "" : ", " + e.unit());
  }

  /** Where it comes from, how well it is known, its range and error, what to note. */
  public static List<String> says(Trace.Entry e) {
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
    Stream<String> error =
        Stream.of(range, e.unit().isEmpty() ? "" : "Error: " + e.statedError())
            .filter(said -> !said.isEmpty());
    return Stream.of(
            from + e.standing() + terms + (terms.isEmpty() ? "" : ")"),
            list("", ". ", error),
            list("Exceeded: ", ", ", e.exceeded().stream().map(SourceWords::left)),
            list("Notes: ", "; ", e.notes().stream()))
        .filter(said -> !said.isEmpty())
        .map(said -> said + ".")
        .toList();
  }

  private static String list(String head, String between, Stream<String> items) {
    String all = items.collect(Collectors.joining(between));
    return all.isEmpty() ? "" : head + all;
  }

  private static String between(double low, double high) {
    return number(low) + " to " + number(high);
  }

  private static String number(double value) {
    return Amounts.plain(Double.parseDouble(Amounts.format("%.4g", value)));
  }
}
