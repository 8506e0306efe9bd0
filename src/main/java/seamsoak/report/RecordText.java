package seamsoak.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Now;
import seamsoak.billet.Seen;
import seamsoak.billet.Step;
import seamsoak.billet.file.ToRecord;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;
import seamsoak.words.WorkWords;
import seamsoak.words.told.WorkTold;

/**
 * What was written into a billet file and where the work stands by that.
 *
 * @param steps as the file has them now
 */
public record RecordText(List<Step> steps, UnitSystem units) {
  /**
   * What was written, in words.
   *
   * @param before the steps as the file had them
   * @param remarks what the smith should know of the billet as it is by that
   */
  public Answer recorded(ToRecord what, List<Step> before, List<String> remarks) {
    WorkWords words = new WorkWords(units);
    List<String> all = new ArrayList<>();
    heat(what).ifPresent(heat -> all.add(words.heat(heat)));
    if (what.ended()) {
      all.add(words.step(step(what)));
    }
    if (!what.seen().isEmpty()) {
      all.add(what.step().title() + ", seen: " + String.join(", ", what.seen().values()));
    }
    List<String> taken = new ArrayList<>(taken(steps));
    taken.removeAll(taken(before));
    List<String> said = new ArrayList<>(remarks);
    if (!taken.isEmpty()) {
      said.add(0, "Done as planned by now, since this was: " + String.join("; ", taken) + ".");
    }
    return told("Written: ", String.join("; ", all), said);
  }

  private static List<String> taken(List<Step> steps) {
    return Now.of(steps).map(now -> WorkWords.taken(now.done(steps))).orElse(List.of());
  }

  /**
   * What is so no more, in words.
   *
   * @param what it was, as it was called when it was written
   */
  public Answer takenBack(String what) {
    return told("Taken back: ", what, List.of());
  }

  private Answer told(String what, String all, List<String> remarks) {
    return Answer.of(
        List.of(
            Chapter.of("answer").words(what + all + ".").words(now()),
            Chapter.of("remarks", "Remarks").items(remarks)));
  }

  private String now() {
    return Now.of(steps)
        .map(now -> new WorkWords(units).now(now, now.left(steps)))
        .orElse("No heat or step is marked as done, so all of the file counts as done.");
  }

  /** What was written, for {@link JsonReport}. */
  Map<String, Object> members(ToRecord what) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("title", what.title());
    all.put("step", what.step().mark().number());
    all.put("do", what.step().name());
    all.put("heat", heat(what).map(WorkTold::done).orElse(null));
    all.put("stepDone", what.ended());
    all.put("seen", what.seen().isEmpty() ? null : look(what));
    return all;
  }

  private Map<String, Object> look(ToRecord what) {
    List<Seen> looks = step(what).mark().seen();
    Seen last = looks.get(looks.size() - 1);
    Map<String, Object> look = new LinkedHashMap<>();
    look.put("where", what.seen().get("where"));
    look.put("line", last.line());
    look.put("widthMm", last.width().map(Length::millimetres).orElse(null));
    look.put("etched", last.etched().orElse(null));
    look.put("on", last.on().map(LocalDate::toString).orElse(null));
    return look;
  }

  private Step step(ToRecord what) {
    return steps.get(what.step().mark().number() - 1);
  }

  private Optional<Now.Done> heat(ToRecord what) {
    return Now.of(steps).stream()
        .flatMap(now -> now.done(steps).stream())
        .filter(d -> d.step() == step(what) && d.heat() == what.heat().orElse(-1))
        .findFirst();
  }
}
