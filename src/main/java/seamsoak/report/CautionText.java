package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.schedule.StepKind;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.ScheduleRemarkWords;
import seamsoak.words.StageWords;

/** Remarks and cautions, each said once with the steps that it belongs to. */
public record CautionText(Advice advice, UnitSystem units) {
  /** Of the soak alone. */
  public String soak() {
    return page(List.of(), List.of(), schedule(kind -> kind == StepKind.SOAK));
  }

  /** Of the schedule, what always holds first. */
  public String schedule() {
    return page(said(), advice.cautions(), schedule(kind -> true));
  }

  /** Of the billet's own steps too. */
  public String all() {
    return page(said(), advice.cautions(), everywhere());
  }

  private List<String> said() {
    return advice.schedule().remarks().stream().map(new ScheduleRemarkWords(units)::says).toList();
  }

  private Map<String, Set<String>> everywhere() {
    Map<String, Set<String>> steps = new LinkedHashMap<>();
    advice.history().forEach(s -> add(steps, s.cautions(), s.kind()));
    schedule(kind -> true).forEach((c, at) -> at.forEach(step -> add(steps, List.of(c), step)));
    return steps;
  }

  /** All cautions but those that always hold, by the steps at which they arise. */
  Map<Set<String>, List<String>> groups() {
    return groups(everywhere());
  }

  /** Remarks on the steps and on the schedule as a whole. */
  List<String> remarks() {
    return remarksWith(said());
  }

  /** Where in the schedule each caution arises; its three refining steps count as one. */
  private Map<String, Set<String>> schedule(Predicate<StepKind> wanted) {
    Map<String, Set<String>> steps = new LinkedHashMap<>();
    for (Segment s : advice.schedule().segments()) {
      StepKind kind = s.step().kind();
      if (wanted.test(kind)) {
        add(steps, s.cautions(), kind.word());
      }
    }
    return steps;
  }

  private static void add(Map<String, Set<String>> steps, List<String> cautions, String step) {
    cautions.forEach(c -> steps.computeIfAbsent(c, k -> new LinkedHashSet<>()).add(step));
  }

  private String page(
      List<String> remarks, List<String> general, Map<String, Set<String>> cautions) {
    return new Page().then(remarks(remarks)).then(cautions(general, cautions)).toString();
  }

  private String remarks(List<String> more) {
    List<String> all = remarksWith(more);
    return all.isEmpty() ? "" : new Page().say("Remarks").items(all).toString();
  }

  private List<String> remarksWith(List<String> more) {
    List<String> all = new ArrayList<>();
    for (StageReport s : advice.history()) {
      s.remarks().forEach(r -> all.add("step " + LinesText.step(s) + ": " + StageWords.remark(r)));
    }
    all.addAll(more);
    return all;
  }

  private static Map<Set<String>, List<String>> groups(Map<String, Set<String>> cautions) {
    Map<Set<String>, List<String>> groups = new LinkedHashMap<>();
    cautions.forEach((c, at) -> groups.computeIfAbsent(at, k -> new ArrayList<>()).add(c));
    return groups;
  }

  private static String cautions(List<String> general, Map<String, Set<String>> cautions) {
    Page page = new Page();
    if (!general.isEmpty()) {
      page.heading("Cautions, always").items(general);
    }
    groups(cautions)
        .forEach((at, said) -> page.heading("Cautions for " + String.join(", ", at)).items(said));
    return page.toString();
  }
}
