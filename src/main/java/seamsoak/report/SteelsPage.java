package seamsoak.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.billet.JustWelded;
import seamsoak.pairing.PairAdvice;
import seamsoak.plan.Advice;
import seamsoak.unit.UnitSystem;

/**
 * What is said of two steels without a billet, as pieces of HTML: whether they belong together, and
 * the treatment of a bar of them.
 *
 * @param treated the bar and what is advised for it, where its sizes were given
 */
public record SteelsPage(PairAdvice pair, Optional<Treated> treated, UnitSystem units) {
  /** A bar of two steels, and its treatment. */
  public record Treated(JustWelded bar, Advice advice) {}

  /** What is read at once: the verdict, and the cycles where there are any. */
  public List<AnswerPage.Piece> answers() {
    return chapters()
        .filter(c -> c.title().isEmpty() && !c.id().equals("rest"))
        .map(AnswerPage.Piece::of)
        .toList();
  }

  /** All else. */
  public List<AnswerPage.Piece> pieces() {
    return chapters().filter(c -> !c.title().isEmpty()).map(AnswerPage.Piece::of).toList();
  }

  private Stream<Chapter> chapters() {
    return Stream.concat(
        new PairText(pair, units).told().all().stream(),
        treated.stream()
            .flatMap(t -> new BilletAnswer(t.advice(), units).treatment(t.bar()).all().stream())
            .map(c -> new Chapter("bar-" + c.id(), c.title(), c.parts())));
  }
}
