package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import seamsoak.plan.Advice;
import seamsoak.unit.UnitSystem;

/** The answers on a billet, each with all of it and with what is read at once. */
public record BilletAnswer(Advice advice, UnitSystem units) {
  private static final int MOST_CAUTIONS = 5;

  public Answer soak() {
    BilletSections s = sections();
    List<String> told = new SoakText(advice, units).answer();
    CautionText cautions = CautionText.soak(advice, units);
    return new Answer(
        List.of(
            answer(told),
            s.lines(),
            s.soak(),
            s.billet(),
            s.more(),
            s.assumed(),
            s.remarks(false),
            cautions.section()),
        brief(
            told,
            List.of(linesNow(), s.more()),
            cautions,
            "--full also shows the soaks side by side, how the lines faded, sizes and carbon"));
  }

  public Answer schedule() {
    BilletSections s = sections();
    ScheduleText text = new ScheduleText(advice, units);
    CautionText cautions = CautionText.schedule(advice, units);
    return new Answer(
        List.of(
            answer(text.answer()), s.schedule(), s.assumed(), s.remarks(true), cautions.section()),
        brief(
            text.answer(),
            List.of(conflicts(), Section.of("schedule").table(text.heatsTable())),
            cautions,
            "--full also shows why and what to check at each step, the quench, what it leaves"));
  }

  public Answer plan() {
    BilletSections s = sections();
    List<String> told = new ArrayList<>(new SoakText(advice, units).answer());
    told.addAll(new ScheduleText(advice, units).told());
    CautionText cautions = CautionText.all(advice, units);
    return new Answer(
        List.of(
            answer(told),
            s.lines(),
            s.soak(),
            s.billet(),
            s.schedule(),
            s.more(),
            s.assumed(),
            s.remarks(true),
            cautions.section()),
        brief(
            told,
            List.of(conflicts(), linesNow(), s.more()),
            cautions,
            "The report has all of it, and so has --full"));
  }

  private BilletSections sections() {
    return new BilletSections(advice, units, Map.of());
  }

  /** What forbids it first of all, then what would hold without that. */
  private Section answer(List<String> told) {
    Section section = Section.of("answer").words(stops());
    return advice.hardStops().isEmpty()
        ? section.words(told)
        : section.words(
            Stream.concat(Stream.of("But for that, what follows would hold."), told.stream())
                .toList());
  }

  private List<String> stops() {
    return advice.hardStops().stream().map(stop -> "Do not do this. " + stop).toList();
  }

  /** A billet that is refused is told that, and no soak. */
  private List<Section> brief(
      List<String> told, List<Section> more, CautionText cautions, String rest) {
    List<Section> all = new ArrayList<>();
    all.add(Section.of("answer").words(stops().isEmpty() ? told : stops()));
    all.addAll(stops().isEmpty() ? more : List.of());
    all.add(cautions.worst(MOST_CAUTIONS));
    int assumed = new BilletText(advice, new Shown(units)).assumed().size();
    String things =
        assumed == 0
            ? ""
            : ", and "
                + (assumed == 1 ? "one thing" : assumed + " things")
                + " assumed since the file does not say";
    all.add(Section.of("rest").words(rest + things + "."));
    return all;
  }

  /** Which lines show. */
  private Section linesNow() {
    return Section.of("lines").words(new LinesText(new Shown(units)).said(advice.soak()));
  }

  private Section conflicts() {
    return Section.of("conflicts", "Conflicts, and what to do")
        .items(
            advice.schedule().conflicts().stream()
                .map(
                    c ->
                        SoakText.capital(BilletSections.sentence(c.says()))
                            + " Do: "
                            + BilletSections.sentence(c.todo()))
                .toList());
  }
}
