package seamsoak.words.pair;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.pairing.Finding;
import seamsoak.pairing.PairAdvice;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.Sentence;

/** The answer on two steels: whether, by what, where carbon goes, what it was worked out for. */
public record PairAnswerWords(PairAdvice advice, UnitSystem units) {
  private static final int DECIDING = 3;

  private Amounts amounts() {
    return new Amounts(units);
  }

  /** Whether they go together. */
  public String says() {
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
      case WATCH -> pair + "can be done with care. Watch: " + few(titles) + ".";
      case CLASH -> pair + "clash, by " + few(titles) + ".";
    };
  }

  private static String few(List<String> titles) {
    return titles.size() <= DECIDING
        ? String.join(", ", titles)
        : String.join(", ", titles.subList(0, DECIDING))
            + " and "
            + (titles.size() - DECIDING)
            + " more";
  }

  /** What smiths say of the pair, blank where nothing is known. */
  public String practice() {
    return advice
        .practice()
        .map(p -> "In the shop: " + p.note() + " (" + p.standing() + ")")
        .orElse("");
  }

  /** A check by its title; one without limits is no verdict. */
  public static String head(Finding f) {
    return (f.limit().silent() ? "" : f.rating().word() + ": ") + title(f);
  }

  public static String title(Finding f) {
    return Sentence.capital(f.limit().title());
  }

  /** The carbon of both after the first weld heats. */
  public String welded(PairAdvice.Evened c) {
    return "After the first %d weld heats of %s %s holds %s %% and %s %s %%, each the mean of its layer."
        .formatted(
            c.weldHeats(),
            amounts().stated(c.weldMinutes()),
            advice.first(),
            Amounts.percent(c.firstMeanPct()),
            advice.second(),
            Amounts.percent(c.secondMeanPct()));
  }

  /** How long it still takes. */
  public String still(Optional<Double> minutes) {
    return minutes.map(m -> m == 0 ? "none" : amounts().time(m)).orElse("never");
  }

  /** What it was worked out for. */
  public String how(PairAdvice.How h) {
    return "Layers of %s %s and %s %s (%s to %s), %s thick when hardened, welded at %s. Assumed: %s."
        .formatted(
            amounts().millimetres(h.firstLayerMm()),
            advice.first(),
            amounts().millimetres(h.secondLayerMm()),
            advice.second(),
            Amounts.number(h.firstSharePct(), 0),
            Amounts.number(100 - h.firstSharePct(), 0),
            amounts().millimetres(h.sectionMm()),
            amounts().heat(h.weldingC()),
            h.assumed().stream().map(RemedyWords::assumed).collect(Collectors.joining(", ")));
  }
}
