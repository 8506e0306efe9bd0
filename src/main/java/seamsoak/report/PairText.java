package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import seamsoak.pairing.Finding;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.Rating;
import seamsoak.pairing.Remedy;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.PairWords;
import seamsoak.words.RemedyWords;
import seamsoak.words.Sentence;

/** Two steels in words: the answer, why, what would make it work, where carbon goes. */
public record PairText(PairAdvice advice, UnitSystem units) {
  private static final String WHY = "Why, the weightiest first";
  private static final int DECIDING = 3;

  public Answer told() {
    List<Finding> against = those(f -> f.rating() != Rating.FITS);
    List<Finding> fits = those(f -> f.rating() == Rating.FITS && !f.limit().silent());
    Chapter know = Chapter.of("know", "Worth knowing").items(lines(those(f -> f.limit().silent())));
    Chapter remedies = Chapter.of("remedies", "What would make it work").items(remedies());
    Chapter remarks =
        Chapter.of("remarks", "Remarks")
            .items(advice.remarks().stream().map(RemedyWords::remark).toList());
    Chapter answer =
        Chapter.of("answer")
            .words(answer())
            .words(
                advice
                    .practice()
                    .map(p -> "In the shop: " + p.note() + " (" + p.standing() + ")")
                    .orElse(""));
    return new Answer(
        List.of(
            answer,
            Chapter.of("against", WHY).terms(terms(against)),
            remedies,
            carbon(),
            know,
            Chapter.of("fits", "What fits").terms(terms(fits)),
            Chapter.of("how", "Worked out for").words(advice.how().map(this::how).orElse("")),
            remarks),
        List.of(
            answer,
            Chapter.of("against", WHY).items(lines(against)),
            remedies,
            against.isEmpty() ? know : Chapter.of("know"),
            remarks,
            Chapter.of("rest").words(rest(against.size(), fits.size()))));
  }

  private static String rest(int against, int fits) {
    return fits == 0
        ? ""
        : (against == 0 ? "Fits: all " + fits + " checks." : "Fits: " + fits + " more checks.")
            + " --full also shows them, all limits, where carbon goes, what it was worked out for.";
  }

  private List<Finding> those(Predicate<Finding> those) {
    return advice.checks().stream().filter(those).toList();
  }

  /** Checks with what was found and their limits. */
  private List<Part.Term> terms(List<Finding> those) {
    return those.stream().map(f -> new Part.Term(head(f), List.of(words().reason(f)))).toList();
  }

  /** The same where there is little room: without the limits. */
  private List<String> lines(List<Finding> those) {
    return those.stream().map(f -> head(f) + ": " + words().says(f)).toList();
  }

  /** A check without limits is no verdict. */
  private static String head(Finding f) {
    return (f.limit().silent() ? "" : f.rating().word() + ": ")
        + Sentence.capital(f.limit().title());
  }

  String answer() {
    String pair = advice.first() + " with " + advice.second() + ": ";
    List<String> titles =
        advice.checks().stream()
            .filter(f -> f.rating() == advice.rating())
            .map(f -> f.limit().title())
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
    PairWords words = words();
    return Columns.of(advice.checks(), units)
        .words("check", f -> Sentence.capital(f.limit().title()))
        .words("rating", f -> f.rating().word())
        .words("what was found", words::reason)
        .captioned("What was checked of " + advice.first() + " with " + advice.second());
  }

  private static String few(List<String> titles) {
    return titles.size() <= DECIDING
        ? String.join(", ", titles)
        : String.join(", ", titles.subList(0, DECIDING))
            + " and "
            + (titles.size() - DECIDING)
            + " more";
  }

  private PairWords words() {
    return new PairWords(units, advice);
  }

  /** What would make it work, where there is something to be mended. */
  List<String> remedies() {
    if (advice.rating() == Rating.FITS || advice.how().isEmpty()) {
      return List.of();
    }
    List<String> all = new ArrayList<>();
    for (Remedy r : advice.remedies()) {
      all.add(
          "%s: %s %s the better for it; the pair is then %s."
              .formatted(
                  new RemedyWords(units).change(r, advice),
                  r.better().stream().distinct().collect(Collectors.joining(", ")),
                  r.better().size() == 1 ? "is" : "are",
                  r.rating() == Rating.FITS ? "one that fits" : "rated " + r.rating().word()));
    }
    List<String> near = advice.insteadOfSecond().stream().map(PairAdvice.Near::id).toList();
    all.add(
        near.isEmpty()
            ? "No grade of the table fits with "
                + advice.first()
                + ", not in a closed stack either."
            : "Another grade: of those that fit with %s %s, nearest to %s by analysis %s %s."
                .formatted(
                    advice.first(),
                    advice.insteadOfSecond().get(0).closedStack()
                        ? "in a closed stack, and none does in the open"
                        : "as they are",
                    advice.second(),
                    near.size() == 1 ? "is" : "are",
                    String.join(", ", near)));
    return all;
  }

  private Chapter carbon() {
    Chapter chapter = Chapter.of("carbon", "Carbon between the layers");
    if (advice.same() || advice.carbon().isEmpty()) {
      return chapter;
    }
    PairAdvice.Evened c = advice.carbon().get();
    Amounts amounts = new Amounts(units);
    chapter =
        chapter.words(
            "After the first %d weld heats of %s %s holds %s %% and %s %s %%, each the mean of its layer."
                .formatted(
                    c.weldHeats(),
                    amounts.stated(c.weldMinutes()),
                    advice.first(),
                    Amounts.percent(c.firstMeanPct()),
                    advice.second(),
                    Amounts.percent(c.secondMeanPct())));
    return chapter
        .table(
            Columns.of(c.heats(), units)
                .words("held for", at -> at.heat().name().toLowerCase(Locale.ROOT))
                .heat("at", PairAdvice.At::temperatureC)
                .words("still to go", at -> still(amounts, at.minutesToEven90()))
                .percent(advice.first() + " %", PairAdvice.At::firstEvenPct)
                .percent(advice.second() + " %", PairAdvice.At::secondEvenPct)
                .captioned(""))
        .words("Still to go: to nine tenths of the way to even, at these layers.");
  }

  private static String still(Amounts amounts, Optional<Double> minutes) {
    return minutes.map(m -> m == 0 ? "none" : amounts.time(m)).orElse("never");
  }

  private String how(PairAdvice.How h) {
    Amounts amounts = new Amounts(units);
    return "Layers of %s %s and %s %s (%s to %s), %s thick when hardened, welded at %s. Assumed: %s."
        .formatted(
            amounts.millimetres(h.firstLayerMm()),
            advice.first(),
            amounts.millimetres(h.secondLayerMm()),
            advice.second(),
            Amounts.number(h.firstSharePct(), 0),
            Amounts.number(100 - h.firstSharePct(), 0),
            amounts.millimetres(h.sectionMm()),
            amounts.heat(h.weldingC()),
            h.assumed().stream().map(RemedyWords::assumed).collect(Collectors.joining(", ")));
  }
}
