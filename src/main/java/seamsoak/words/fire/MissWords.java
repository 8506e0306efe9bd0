package seamsoak.words.fire;

import java.util.ArrayList;
import java.util.List;
import seamsoak.plan.Advice;
import seamsoak.state.HeatRisk;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.ScheduleWords;
import seamsoak.words.Sentence;
import seamsoak.words.SoakAnswerWords;
import seamsoak.words.StageWords;
import seamsoak.words.StopWords;

/**
 * What a heat that did not go as planned comes to: what the plan was, and what it is by now.
 *
 * @param before as it was planned
 * @param after with what was entered
 */
public record MissWords(Advice before, Advice after, UnitSystem units) {
  /**
   * All that is to be said of it.
   *
   * @param step of the file that it was entered at
   */
  public List<String> said(int step) {
    List<String> all = new ArrayList<>();
    after.hardStops().stream()
        .filter(s -> !before.hardStops().contains(s))
        .map(new StopWords(units)::says)
        .forEach(all::add);
    List<HeatRisk> was = heats(before, step);
    heats(after, step).stream()
        .filter(r -> !was.contains(r))
        .map(r -> Sentence.capital(StageWords.heat(r, units)) + ".")
        .forEach(all::add);
    all.add(soak());
    if (after.hardStops().isEmpty()) {
      // how sure, and what was seen comes to
      all.addAll(brief(after).stream().skip(1).filter(s -> !brief(before).contains(s)).toList());
    }
    List<String> known = conflicts(before);
    conflicts(after).stream().filter(c -> !known.contains(c)).forEach(all::add);
    return List.copyOf(all);
  }

  private static List<HeatRisk> heats(Advice advice, int step) {
    return advice.history().stream()
        .filter(s -> s.step() == step)
        .map(StageReport::heats)
        .flatMap(List::stream)
        .toList();
  }

  private String soak() {
    String was = says(before);
    String is = says(after);
    return was.equals(is) ? "The plan stays: " + is : "The plan was: " + was + " It is now: " + is;
  }

  private List<String> brief(Advice advice) {
    return new SoakAnswerWords(advice.soak(), units).brief();
  }

  private String says(Advice advice) {
    return Sentence.ended(new SoakAnswerWords(advice.soak(), units).says());
  }

  private List<String> conflicts(Advice advice) {
    return new ScheduleWords(advice.schedule(), units).conflicts();
  }
}
