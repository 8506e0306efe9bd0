package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import seamsoak.advice.Advice;
import seamsoak.advice.ScheduleAdvice.Segment;
import seamsoak.advice.StageReport;

/** Remarks and cautions, each said once with the steps that it belongs to. */
public record CautionText(Advice advice) {
  /** Of the soak alone. */
  public String soak() {
    return page(List.of(), List.of(), schedule("soak"::equals));
  }

  /** Of the schedule, what always holds first. */
  public String schedule() {
    return page(advice.schedule().remarks(), advice.cautions(), schedule(step -> true));
  }

  /** Of the billet's own steps too. */
  public String all() {
    Map<String, Set<String>> steps = new LinkedHashMap<>();
    advice.history().forEach(s -> add(steps, s.cautions(), s.kind()));
    schedule(step -> true).forEach((c, at) -> at.forEach(step -> add(steps, List.of(c), step)));
    return page(advice.schedule().remarks(), advice.cautions(), steps);
  }

  /** Where in the schedule each caution arises; its three refining steps count as one. */
  private Map<String, Set<String>> schedule(Predicate<String> wanted) {
    Map<String, Set<String>> steps = new LinkedHashMap<>();
    for (Segment s : advice.schedule().segments()) {
      String word = s.step().split(" ")[0];
      if (wanted.test(word)) {
        add(steps, s.cautions(), word);
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
    List<String> all = new ArrayList<>();
    for (StageReport s : advice.history()) {
      s.remarks().forEach(r -> all.add("step " + LinesText.step(s) + ": " + r));
    }
    all.addAll(more);
    return all.isEmpty() ? "" : new Page().say("Remarks").items(all).toString();
  }

  private static String cautions(List<String> general, Map<String, Set<String>> cautions) {
    Map<Set<String>, List<String>> groups = new LinkedHashMap<>();
    cautions.forEach((c, at) -> groups.computeIfAbsent(at, k -> new ArrayList<>()).add(c));
    Page page = new Page();
    if (!general.isEmpty()) {
      page.heading("Cautions, always").items(general);
    }
    groups.forEach((at, said) -> page.heading("Cautions for " + String.join(", ", at)).items(said));
    return page.toString();
  }
}
