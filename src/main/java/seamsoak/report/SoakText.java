package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.plan.Advice;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakAdvice.OptionRemark;
import seamsoak.soak.SoakAdvice.Recommended;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.SoakWords;

/** The soak in words: the answer, what shows, the options, what else to know. */
record SoakText(Advice advice, UnitSystem units) {
  private static final int TABLE_STEP = 20;

  private Amounts amounts() {
    return new Amounts(units);
  }

  /** What to do in one sentence, and why. */
  List<String> answer() {
    List<String> all = new ArrayList<>(List.of(soak()));
    advice
        .soak()
        .recommended()
        .filter(r -> r.minutes() > 0)
        .ifPresent(r -> all.add("Why: " + new SoakWords(units).reason(r.reason()) + "."));
    return all;
  }

  String soak() {
    SoakAdvice soak = advice.soak();
    if (soak.recommended().isEmpty()) {
      return "No soak within what is allowed (%s) clears the lines."
          .formatted(amounts().time(soak.mostMinutes()));
    }
    Recommended r = soak.recommended().get();
    if (r.minutes() == 0) {
      return "No soak needed: " + new SoakWords(units).reason(r.reason()) + ".";
    }
    return "Soak at %s for %s (%s)."
        .formatted(amounts().heat(r.temperatureC()), amounts().time(r.minutes()), band(r));
  }

  String band(Recommended r) {
    if (!hasBand()) {
      return "the likely case alone";
    }
    double low = Math.floor(r.minutesLow().orElse(0.0));
    return r.minutesHigh()
        .map(
            high -> {
              String to = amounts().time(Math.ceil(high));
              String from = amounts().time(low);
              return to.endsWith(" min") && high < 120
                  ? Math.round(low) + " to " + to
                  : from + " to " + to;
            })
        .orElse(amounts().time(low) + " to more than 24 h");
  }

  private boolean hasBand() {
    return advice.soak().samples() > 0;
  }

  boolean noneNeeded() {
    return advice.soak().recommended().filter(r -> r.minutes() == 0).isPresent();
  }

  static String nowhere() {
    return "At no temperature that the steels stand do the lines clear within 24 h.";
  }

  /** The soaks that are listed, each with what it costs. */
  Table table() {
    return Columns.of(listed(), units)
        .heat("at", SoakOption::temperatureC)
        .words("min", o -> minutesCell(o.minutes(), true))
        .words("low", o -> hasBand() ? minutesCell(o.minutesLow(), false) : "-")
        .words("high", o -> hasBand() ? minutesCell(o.minutesHigh(), true) : "-")
        .lengthIfKnown("lost", SoakOption::metalLossMm)
        .lengthIfKnown("skin", SoakOption::skinMm)
        .numberIfKnown("grain", 1, SoakOption::grainAstm)
        .words("", this::mark)
        .captioned(
            "Soaks that clear the lines: minutes held at heat in the likely case, "
                + (hasBand()
                    ? "low and high of "
                        + advice.soak().samples()
                        + " cases tried (8 of 10 lie between)"
                    : "no other case tried")
                + ", metal lost on a face, skin without full"
                + " carbon, ASTM grain size number (small is coarse)");
  }

  /** Minutes of which nothing is known but that they are more than a day. */
  private static String minutesCell(Optional<Double> minutes, boolean roundUp) {
    return minutes
        .map(m -> Long.toString((long) (roundUp ? Math.ceil(m) : Math.floor(m))))
        .orElse(">24 h");
  }

  private List<SoakOption> listed() {
    return advice.soak().options().stream().filter(this::listed).toList();
  }

  /** What the marks in the table stand for, as far as they are used. */
  String legend() {
    SoakAdvice soak = advice.soak();
    String used = listed().stream().map(this::mark).collect(Collectors.joining());
    String legend =
        Stream.of(
                "* recommended",
                "> longer than the " + amounts().time(soak.mostMinutes()) + " allowed",
                "f above the forging limit, " + amounts().heat(soak.highestForgingC()),
                "b above the burning line, " + amounts().heat(soak.burningC()),
                "h above the highest you allow")
            .filter(meaning -> used.indexOf(meaning.charAt(0)) >= 0)
            .collect(Collectors.joining("; "));
    return legend.isEmpty() ? "" : legend + ".";
  }

  private boolean listed(SoakOption o) {
    return recommends(o)
        || o.minutes().isPresent() && Math.round(o.temperatureC()) % TABLE_STEP == 0;
  }

  private boolean recommends(SoakOption o) {
    return advice
        .soak()
        .recommended()
        .filter(r -> r.minutes() > 0 && r.temperatureC() == o.temperatureC())
        .isPresent();
  }

  private String mark(SoakOption o) {
    SoakAdvice soak = advice.soak();
    String limit =
        o.temperatureC() > soak.burningC()
            ? "b"
            : o.temperatureC() > soak.highestForgingC() ? "f" : "";
    boolean own = o.remarks().contains(OptionRemark.ABOVE_WISH);
    return (recommends(o) ? "*" : "") + (o.clears() ? "" : ">") + limit + (own ? "h" : "");
  }

  List<String> notes() {
    return advice.soak().advice().stream().map(new SoakWords(units)::note).toList();
  }

  static String capital(String s) {
    return s.substring(0, 1).toUpperCase(Locale.ROOT) + s.substring(1);
  }
}
