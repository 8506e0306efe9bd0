package seamsoak.report;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import seamsoak.pairing.Finding;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.Rating;
import seamsoak.unit.UnitSystem;
import seamsoak.words.pair.PairAnswerWords;
import seamsoak.words.pair.PairWords;
import seamsoak.words.pair.RemedyWords;

/** Two steels: the answer, why, what would make it work, where carbon goes. */
public record PairText(PairAdvice advice, UnitSystem units) {
  private static final String WHY = "Why, the weightiest first";
  private static final int DECIDING = 3;

  public Answer told() {
    PairAnswerWords answer = new PairAnswerWords(advice, units);
    List<Finding> against = those(f -> f.rating() != Rating.FITS);
    List<Finding> fits = those(f -> f.rating() == Rating.FITS && !f.limit().silent());
    Chapter know = Chapter.of("know", "Worth knowing").items(lines(those(f -> f.limit().silent())));
    Chapter remedies = Chapter.of("remedies", "What would make it work").items(remedies());
    Chapter remarks =
        Chapter.of("remarks", "Remarks")
            .items(remarks(r -> !(r instanceof PairAdvice.Remark.UnknownMake)));
    Chapter first =
        Chapter.of("answer")
            .words(answer.says())
            .words(remarks(r -> r instanceof PairAdvice.Remark.UnknownMake))
            .words(answer.practice());
    return new Answer(
        List.of(
            first,
            Chapter.of("against", WHY).terms(terms(against)),
            remedies,
            carbon(),
            know,
            Chapter.of("fits", "What fits").terms(terms(fits)),
            Chapter.of("how", "Worked out for").words(advice.how().map(answer::how).orElse("")),
            remarks),
        List.of(
            first,
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

  private List<String> remarks(Predicate<PairAdvice.Remark> those) {
    RemedyWords words = new RemedyWords(units);
    return advice.remarks().stream().filter(those).map(words::remark).toList();
  }

  private List<Finding> those(Predicate<Finding> those) {
    return advice.checks().stream().filter(those).toList();
  }

  /** Checks with what was found and their limits. */
  private List<Part.Term> terms(List<Finding> those) {
    return those.stream()
        .map(f -> new Part.Term(PairAnswerWords.head(f), List.of(words().reason(f))))
        .toList();
  }

  /** The same where there is little room: without the limits. */
  private List<String> lines(List<Finding> those) {
    return those.stream().map(f -> PairAnswerWords.head(f) + ": " + words().says(f)).toList();
  }

  /** Every check, the weightiest first. */
  Table table() {
    PairWords words = words();
    return Columns.of(advice.checks(), units)
        .words("check", PairAnswerWords::title)
        .words("rating", f -> f.rating().word())
        .words("what was found", words::reason)
        .captioned("What was checked of " + advice.first() + " with " + advice.second());
  }

  private PairWords words() {
    return new PairWords(units, advice);
  }

  /** What would make it work, where there is something to be mended. */
  List<String> remedies() {
    if (advice.rating() == Rating.FITS || advice.how().isEmpty()) {
      return List.of();
    }
    return new RemedyWords(units).all(advice);
  }

  private Chapter carbon() {
    Chapter chapter = Chapter.of("carbon", "Carbon between the layers");
    if (advice.same() || advice.carbon().isEmpty()) {
      return chapter;
    }
    PairAdvice.Evened c = advice.carbon().get();
    PairAnswerWords words = new PairAnswerWords(advice, units);
    return chapter
        .words(words.welded(c))
        .table(
            Columns.of(c.heats(), units)
                .words("held for", at -> at.heat().name().toLowerCase(Locale.ROOT))
                .heat("at", PairAdvice.At::temperatureC)
                .words("still to go", at -> words.still(at.minutesToEven90()))
                .percent(advice.first() + " %", PairAdvice.At::firstEvenPct)
                .percent(advice.second() + " %", PairAdvice.At::secondEvenPct)
                .captioned(""))
        .words("Still to go: to nine tenths of the way to even, at these layers.");
  }
}
