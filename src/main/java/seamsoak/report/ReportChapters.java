package seamsoak.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.pairing.PairAdvice;
import seamsoak.plan.Outlay;
import seamsoak.trace.Trace;
import seamsoak.words.Glossary;
import seamsoak.words.SourceWords;
import seamsoak.words.pair.PairAnswerWords;

/**
 * What follows the shop card in a report.
 *
 * @param billet what is said of it
 * @param pairs each two steels of the stack that lie on each other
 * @param outlay what the work takes; empty where that is told elsewhere
 */
record ReportChapters(
    BilletChapters billet,
    List<PairAdvice> pairs,
    Optional<Outlay> outlay,
    Trace trace,
    Colophon colophon) {
  List<Chapter> all() {
    return Stream.of(
            CautionText.all(billet.advice(), billet.units()).chapter(),
            billet.heats(),
            billet.work(),
            billet.remarks(true),
            billet.lines(),
            billet.face(),
            billet.billet(),
            billet.soak(),
            pairing(),
            billet.schedule(),
            hoursAndStock(),
            billet.more(),
            billet.assumed(),
            sources(),
            words())
        .filter(s -> !s.parts().isEmpty())
        .toList();
  }

  /** Those that tell of the billet itself; what the numbers rest on is left to the report. */
  List<Chapter> ofBillet() {
    return all().stream().filter(c -> !c.id().equals("method") && !c.id().equals("words")).toList();
  }

  private Chapter hoursAndStock() {
    return outlay
        .map(o -> new OutlayText(o, billet.units()).chapter())
        .orElseGet(() -> Chapter.of("outlay", ""));
  }

  private Chapter pairing() {
    Chapter chapter = Chapter.of("pairing", "The pairing");
    for (PairAdvice pair : pairs) {
      PairText text = new PairText(pair, billet.units());
      String answer = new PairAnswerWords(pair, billet.units()).says();
      chapter = chapter.head(answer).items(text.remedies()).table(text.table());
    }
    return chapter;
  }

  Chapter sources() {
    Chapter chapter =
        Chapter.of("method", "Method and sources")
            .terms(
                List.of(
                    new Part.Term("program", List.of(colophon.program())),
                    new Part.Term("tables", List.of(colophon.data())),
                    new Part.Term("command", List.of(colophon.command()))))
            .words(SourceWords.METHOD);
    List<String> left = SourceWords.exceeded(trace);
    chapter =
        left.isEmpty()
            ? chapter.words("No formula was used outside its range.")
            : chapter.head("Ranges exceeded").items(left);
    return trace.entries().isEmpty()
        ? chapter
        : chapter
            .head("What each number rests on")
            .terms(trace.entries().stream().map(SourcesText::term).toList());
  }

  private static Chapter words() {
    return Chapter.of("words", "Words")
        .terms(
            Stream.of(Glossary.values())
                .map(g -> new Part.Term(g.word(), List.of(g.meaning() + ".")))
                .toList());
  }
}
