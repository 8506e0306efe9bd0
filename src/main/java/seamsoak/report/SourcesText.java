package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import seamsoak.advice.Trace;

/**
 * What an answer rests on, in words. Temperatures are in C and contents in wt%, as the sources have
 * them.
 */
public record SourcesText(Trace trace) {
  /** The section below an answer; nothing when nobody asked for it. */
  public String page() {
    if (trace.entries().isEmpty()) {
      return "";
    }
    Page page = new Page().say("Sources (temperatures in C, contents in wt%)");
    trace.entries().forEach(e -> entry(page, e));
    return "\n" + page;
  }

  private static void entry(Page page, Trace.Entry e) {
    page.point(e.name() + ": " + e.gives() + (e.unit().isEmpty() ? "" : ", " + e.unit()));
    page.below(from(e) + standing(e) + ".");
    List<String> limits = new ArrayList<>();
    if (!e.ranges().isEmpty()) {
      limits.add(
          "Range: "
              + e.ranges().stream()
                  .map(r -> r.quantity() + " " + between(r.low(), r.high()))
                  .collect(Collectors.joining(", ")));
    }
    limits.add("Error: " + e.statedError());
    page.below(String.join(". ", limits) + ".");
    if (!e.exceeded().isEmpty()) {
      page.below(
          "Exceeded: "
              + e.exceeded().stream()
                  .map(o -> o.by() + " " + o.quantity() + " " + number(o.value()))
                  .collect(Collectors.joining(", "))
              + ".");
    }
    if (!e.notes().isEmpty()) {
      page.below("Notes: " + String.join("; ", e.notes()) + ".");
    }
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
