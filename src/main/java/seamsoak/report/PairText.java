package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.pairing.Finding;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairRemedies;
import seamsoak.pairing.Rating;
import seamsoak.pairing.Remedy;
import seamsoak.unit.UnitSystem;

/** Two steels in words: the answer, why, what would make it work, where carbon goes. */
public record PairText(PairAdvice advice, UnitSystem units) {
  private static final int WORD = 5;
  private static final int DECIDING = 3;

  public String page() {
    Page page = new Page().say(answer());
    advice
        .practice()
        .ifPresent(p -> page.say("In the shop: " + p.note() + " (" + p.standing() + ")"));
    reasons(page, "Why, the weightiest first", f -> f.rating() != Rating.FITS);
    remedies(page);
    advice.carbon().filter(c -> !advice.same()).ifPresent(c -> carbon(page, c));
    told(page);
    reasons(page, "What fits", f -> f.rating() == Rating.FITS && !isTold(f));
    advice.how().ifPresent(h -> page.heading("Reckoned with").say(how(h)));
    return page.toString();
  }

  String answer() {
    String pair = advice.first() + " with " + advice.second() + ": ";
    List<String> titles =
        advice.checks().stream()
            .filter(f -> f.rating() == advice.rating())
            .map(Finding::title)
            .distinct()
            .toList();
    return switch (advice.rating()) {
      case FITS ->
          pair
              + (advice.same()
                  ? "fits. It is one steel twice; what it needs for itself stands below."
                  : "fits. No check warns.");
      case WATCH -> pair + "watch. It can be done, with care for " + few(titles) + ".";
      case CLASH -> pair + "clash, by " + few(titles) + ".";
    };
  }

  /** Every check, the weightiest first. */
  Table table() {
    Table table = new Table("check", "rating", "what was found");
    for (Finding f : advice.checks()) {
      table.row(SoakText.capital(f.title()), f.rating().word(), f.reason());
    }
    return table.captioned("What was checked of " + advice.first() + " with " + advice.second());
  }

  private static String few(List<String> titles) {
    return titles.size() <= DECIDING
        ? String.join(", ", titles)
        : String.join(", ", titles.subList(0, DECIDING))
            + " and "
            + (titles.size() - DECIDING)
            + " more";
  }

  private void reasons(Page page, String heading, java.util.function.Predicate<Finding> those) {
    List<Finding> found = advice.checks().stream().filter(those).toList();
    if (!found.isEmpty()) {
      page.heading(heading);
      found.forEach(
          f -> page.item(f.rating().word(), WORD, SoakText.capital(f.title()) + ": " + f.reason()));
    }
  }

  /** A check without limits is no verdict. */
  private static boolean isTold(Finding f) {
    return f.watch().isEmpty() && f.clash().isEmpty();
  }

  private void told(Page page) {
    List<String> told =
        advice.checks().stream()
            .filter(PairText::isTold)
            .map(f -> SoakText.capital(f.title()) + ": " + f.reason())
            .toList();
    if (!told.isEmpty()) {
      page.heading("Worth knowing").items(told);
    }
  }

  private void remedies(Page page) {
    if (advice.rating() == Rating.FITS || advice.how().isEmpty()) {
      return;
    }
    page.heading("What would make it work").items(remedies());
  }

  /** What would make it work, where there is something to be mended. */
  List<String> remedies() {
    if (advice.rating() == Rating.FITS || advice.how().isEmpty()) {
      return List.of();
    }
    List<String> all = new ArrayList<>();
    for (Remedy r : advice.remedies()) {
      all.add(
          r.change()
              + ": "
              + r.better().stream().distinct().collect(Collectors.joining(", "))
              + (r.better().size() == 1 ? " is" : " are")
              + " the better for it; the pair is then "
              + (r.rating() == Rating.FITS ? "one that fits" : "rated " + r.rating().word())
              + ".");
    }
    List<String> near = advice.insteadOfSecond().stream().map(PairRemedies.Near::id).toList();
    all.add(
        near.isEmpty()
            ? "No grade of the table fits with "
                + advice.first()
                + ", not in a closed stack either."
            : "Another grade: of those that fit with "
                + advice.first()
                + (advice.insteadOfSecond().get(0).closedStack()
                    ? " in a closed stack, and none does in the open, nearest to "
                    : " as they are, nearest to ")
                + advice.second()
                + " by analysis "
                + (near.size() == 1 ? "is " : "are ")
                + String.join(", ", near)
                + ".");
    return all;
  }

  private void carbon(Page page, PairAdvice.Evened c) {
    Shown shown = new Shown(units);
    page.heading("Carbon between the layers")
        .say(
            "After the first "
                + c.weldHeats()
                + " weld heats of "
                + shown.stated(c.weldMinutes())
                + " "
                + advice.first()
                + " holds "
                + Shown.percent(c.firstMeanPct())
                + " % and "
                + advice.second()
                + " "
                + Shown.percent(c.secondMeanPct())
                + " %, each the mean of its layer.");
    Table table =
        new Table(
            "held for",
            shown.temperatureHeads("at"),
            "still to go",
            advice.first() + " %",
            advice.second() + " %");
    for (PairAdvice.At at : c.heats()) {
      table.row(
          at.heat(),
          shown.temperatureCells(at.temperatureC()),
          still(shown, at.minutesToEven90()),
          Shown.percent(at.firstEvenPct()),
          Shown.percent(at.secondEvenPct()));
    }
    page.table(table).say("Still to go: to nine tenths of the way to even, at these layers.");
  }

  private static String still(Shown shown, Optional<Double> minutes) {
    return minutes.map(m -> m == 0 ? "none" : shown.time(m)).orElse("never");
  }

  private String how(PairAdvice.How h) {
    Shown shown = new Shown(units);
    return "Layers of "
        + shown.length(h.firstLayerMm())
        + " "
        + advice.first()
        + " and "
        + shown.length(h.secondLayerMm())
        + " "
        + advice.second()
        + " ("
        + Shown.number(h.firstSharePct(), 0)
        + " to "
        + Shown.number(100 - h.firstSharePct(), 0)
        + "), "
        + shown.length(h.sectionMm())
        + " thick when hardened, welded at "
        + shown.temperature(h.weldingC())
        + ". Assumed: "
        + String.join(", ", h.assumed())
        + ".";
  }
}
