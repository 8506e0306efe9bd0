package seamsoak.report;

import java.util.List;
import java.util.stream.Stream;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.Rating;
import seamsoak.plan.BilletCheck;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.DefaultWords;
import seamsoak.words.FileWords;
import seamsoak.words.StageWords;
import seamsoak.words.StopWords;
import seamsoak.words.pair.PairAnswerWords;

/** Whether a billet can be made as its file has it, and what it comes to. */
public record CheckText(BilletCheck check, List<PairAdvice> pairs, UnitSystem units) {
  private static final String SEE = " The command pair tells why, and what helps.";

  /** So many of the last steps leave a terminal room for the rest. */
  private static final int LAST = 12;

  public Answer answer() {
    List<StageReport> history = check.history();
    Chapter answer =
        Chapter.of("answer")
            .words(new StopWords(units).forbid(check.hardStops()))
            .words(check.hardStops().isEmpty() ? StageWords.made(history, units) : "")
            .words(DefaultWords.ask(check.assumed()));
    Chapter heats =
        Chapter.of("heats", "Heats that may spoil it")
            .items(StageWords.heats(history, true, units));
    Chapter steels =
        Chapter.of("pairs", "Steels that do not simply go together")
            .items(
                pairs.stream()
                    .filter(p -> p.rating() != Rating.FITS)
                    .map(p -> new PairAnswerWords(p, units).says() + SEE)
                    .toList());
    Chapter remarks =
        Chapter.of("remarks", "Remarks")
            .items(
                Stream.of(
                        FileWords.old(check.oldWords()),
                        StageWords.remarks(history),
                        StageWords.heats(history, false, units))
                    .flatMap(List::stream)
                    .toList());
    Chapter assumed =
        Chapter.of("assumed", "Assumed, since the file does not say")
            .items(new DefaultWords(units).together(check.assumed()));
    Chapter rest =
        Chapter.of("rest").words("--full has every step, remarks and all that is assumed.");
    return new Answer(
        List.of(answer, heats, steels, sizes(0), remarks, assumed),
        List.of(answer, heats, steels, sizes(Math.max(0, history.size() - LAST)), assumed, rest));
  }

  private Chapter sizes(int from) {
    List<StageReport> history = check.history();
    return Chapter.of("sizes")
        .table(BilletTables.sizes(history.subList(from, history.size()), units));
  }
}
