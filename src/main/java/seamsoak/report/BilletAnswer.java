package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import seamsoak.plan.Advice;
import seamsoak.unit.UnitSystem;
import seamsoak.words.StopWords;

/** The answers on a billet, each with all of it and with what is read at once. */
public record BilletAnswer(Advice advice, UnitSystem units) {
  private static final int MOST_CAUTIONS = 5;

  public Answer soak() {
    BilletSections s = sections();
    return answer(
        new SoakText(advice, units).answer(),
        List.of(s.lines(), s.soak(), s.billet(), s.more(), s.assumed(), s.remarks(false)),
        List.of(linesNow(), s.more()),
        CautionText.soak(advice, units),
        "--full also shows the soaks side by side, how the lines faded, sizes and carbon");
  }

  public Answer schedule() {
    BilletSections s = sections();
    ScheduleText text = new ScheduleText(advice, units);
    return answer(
        text.answer(),
        List.of(s.schedule(), s.assumed(), s.remarks(true)),
        // the answer names the heats: where the steels disagree, that needs the room of a table
        advice.schedule().conflicts().isEmpty()
            ? List.of(Section.of("schedule").table(text.heatsTable()))
            : List.of(conflicts()),
        CautionText.schedule(advice, units),
        "--full also shows why and what to check at each step, the quench, what it leaves");
  }

  public Answer plan() {
    BilletSections s = sections();
    List<String> told = new ArrayList<>(new SoakText(advice, units).answer());
    told.addAll(new ScheduleText(advice, units).told());
    return answer(
        told,
        List.of(
            s.lines(), s.soak(), s.billet(), s.schedule(), s.more(), s.assumed(), s.remarks(true)),
        List.of(conflicts(), linesNow()),
        CautionText.all(advice, units),
        "The report and --full have all of it");
  }

  private BilletSections sections() {
    return new BilletSections(advice, units, Map.of());
  }

  /**
   * What forbids it comes first of all. At once, a billet that is refused is told that and no soak.
   *
   * @param told the answer itself
   * @param all what all of it has besides
   * @param brief what is read at once besides
   * @param rest what is not
   */
  private Answer answer(
      List<String> told,
      List<Section> all,
      List<Section> brief,
      CautionText cautions,
      String rest) {
    Section stops =
        Section.of("answer")
            .words(
                advice.hardStops().stream()
                    .map(new StopWords(units)::says)
                    .map(stop -> "Do not do this. " + stop)
                    .toList());
    boolean refused = !advice.hardStops().isEmpty();
    Section answer = refused ? stops.words("But for that, what follows would hold.") : stops;
    int assumed = new BilletText(advice, new Shown(units)).assumed().size();
    String things =
        assumed == 0
            ? "."
            : ", and %s assumed since the file does not say."
                .formatted(assumed == 1 ? "one thing" : assumed + " things");
    return new Answer(
        listed(answer.words(told), all, cautions.section()),
        listed(
            refused ? stops : stops.words(told),
            refused ? List.of() : brief,
            cautions.worst(MOST_CAUTIONS),
            Section.of("rest").words(rest + things)));
  }

  private static List<Section> listed(Section first, List<Section> more, Section... last) {
    return Stream.of(Stream.of(first), more.stream(), Stream.of(last))
        .flatMap(sections -> sections)
        .toList();
  }

  /** Which lines show. */
  private Section linesNow() {
    return Section.of("lines").words(new LinesText(new Shown(units)).said(advice.soak()));
  }

  private Section conflicts() {
    return Section.of("conflicts", "Conflicts, and what to do")
        .items(BilletSections.conflictsInShort(advice, units));
  }
}
