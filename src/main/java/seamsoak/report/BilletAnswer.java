package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import seamsoak.billet.JustWelded;
import seamsoak.plan.Advice;
import seamsoak.unit.UnitSystem;
import seamsoak.words.DefaultWords;
import seamsoak.words.LineWords;
import seamsoak.words.ScheduleWords;
import seamsoak.words.SoakAnswerWords;
import seamsoak.words.StopWords;
import seamsoak.words.WorkWords;
import seamsoak.words.fire.SoakedWords;

/** The answers on a billet, each with all of it and with what is read at once. */
public record BilletAnswer(Advice advice, UnitSystem units) {
  private static final int MOST_CAUTIONS = 5;

  public Answer soak() {
    BilletChapters s = chapters();
    return answer(
        new SoakAnswerWords(advice.soak(), units).answer(),
        new SoakAnswerWords(advice.soak(), units).brief(),
        List.of(s.lines(), s.soak(), s.billet(), s.more(), s.assumed(), s.remarks(false)),
        List.of(linesNow(), s.more()),
        CautionText.soak(advice, units),
        "--full also shows the soaks side by side, how the lines faded, sizes and carbon");
  }

  public Answer schedule() {
    return scheduled(words().answer(advice.soak().clears()));
  }

  /** Of two steels, with what they are taken for. */
  public Answer treatment(JustWelded taken) {
    List<String> told = new ArrayList<>(words().told());
    told.add(new DefaultWords(units).taken(taken));
    return scheduled(told);
  }

  private Answer scheduled(List<String> told) {
    BilletChapters s = chapters();
    return answer(
        told,
        told,
        List.of(s.schedule(), s.assumed(), s.remarks(true)),
        // the answer names the heats: where the steels disagree, that needs the room of a table
        advice.schedule().conflicts().isEmpty()
            ? List.of(
                Chapter.of("schedule")
                    .table(new ScheduleTables(advice.schedule(), units).heatsTable()))
            : List.of(conflicts()),
        CautionText.schedule(advice, units),
        "--full also shows why and what to check at each step, the quench, what it leaves");
  }

  public Answer plan() {
    BilletChapters s = chapters();
    SoakAnswerWords soak = new SoakAnswerWords(advice.soak(), units);
    List<String> told = new ArrayList<>(soak.answer());
    told.addAll(words().told());
    List<String> toldAtOnce = new ArrayList<>(soak.brief());
    toldAtOnce.addAll(words().told());
    return answer(
        told,
        toldAtOnce,
        List.of(
            s.lines(),
            s.face(),
            s.soak(),
            s.billet(),
            s.schedule(),
            s.more(),
            s.assumed(),
            s.remarks(true)),
        List.of(conflicts(), linesNow()),
        CautionText.all(advice, units),
        "The report and --full have all of it");
  }

  private ScheduleWords words() {
    return new ScheduleWords(advice.schedule(), units);
  }

  private BilletChapters chapters() {
    return new BilletChapters(advice, units, List.of());
  }

  /**
   * What forbids it comes first of all. At once, a billet that is refused is told that and no soak.
   *
   * @param told the answer itself
   * @param toldAtOnce as much of it as is read at once
   * @param all what all of it has besides
   * @param brief what is read at once besides
   * @param rest what is not
   */
  private Answer answer(
      List<String> told,
      List<String> toldAtOnce,
      List<Chapter> all,
      List<Chapter> brief,
      CautionText cautions,
      String rest) {
    Chapter stops = Chapter.of("answer").words(new StopWords(units).forbid(advice.hardStops()));
    boolean refused = !advice.hardStops().isEmpty();
    Chapter heats = chapters().heats();
    Chapter answer = refused ? stops.words(StopWords.OTHERWISE) : stops;
    int assumed = new DefaultWords(units).together(advice.defaults()).size();
    String things =
        assumed == 0
            ? "."
            : ", and %s assumed since the file does not say."
                .formatted(assumed == 1 ? "one thing" : assumed + " things");
    return new Answer(
        listed(answer.words(told), heats, with(chapters().work(), all), cautions.chapter()),
        listed(
            refused ? stops : stops.words(toldAtOnce),
            heats,
            refused ? List.of() : with(standing(), brief),
            cautions.worst(MOST_CAUTIONS),
            Chapter.of("rest").words(rest + things)));
  }

  private static List<Chapter> listed(
      Chapter first, Chapter second, List<Chapter> more, Chapter... last) {
    return Stream.of(Stream.of(first, second), more.stream(), Stream.of(last))
        .flatMap(chapters -> chapters)
        .toList();
  }

  private static List<Chapter> with(Chapter first, List<Chapter> rest) {
    return first.parts().isEmpty() ? rest : Stream.concat(Stream.of(first), rest.stream()).toList();
  }

  /** Where the work stands, if anything was done. */
  private Chapter standing() {
    return Chapter.of("work")
        .words(advice.work().map(new WorkWords(units)::now).stream().toList())
        .words(new SoakedWords(units).says(advice).orElse(""));
  }

  /** Which lines show: when the file is done, and before that where the work stands. */
  private Chapter linesNow() {
    LineWords words = new LineWords(units);
    Chapter lines = Chapter.of("lines");
    return advice
        .work()
        .map(w -> lines.items(words.said(w.metal())).words("When all of the file is done:"))
        .orElse(lines)
        .words(words.said(advice.soak()));
  }

  private Chapter conflicts() {
    return Chapter.of("conflicts", "Conflicts, and what to do").items(words().conflicts());
  }
}
