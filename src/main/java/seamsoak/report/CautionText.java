package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import seamsoak.advice.Advice;
import seamsoak.advice.ScheduleAdvice.Segment;
import seamsoak.advice.StageReport;

/** Remarks and cautions, each said once with the steps that it belongs to. */
public record CautionText(Advice advice) {
  /** Of the soak alone. */
  public String soak() {
    return page(List.of(), List.of(), Set.of("soak"));
  }

  /** Of the whole schedule, what always holds first. */
  public String all() {
    Set<String> steps = new LinkedHashSet<>();
    advice.schedule().segments().forEach(s -> steps.add(s.step()));
    return page(advice.schedule().remarks(), advice.cautions(), steps);
  }

  private String page(List<String> remarks, List<String> general, Set<String> steps) {
    return new Page().then(remarks(remarks)).then(cautions(general, steps)).toString();
  }

  private String remarks(List<String> more) {
    List<String> all = new ArrayList<>();
    for (StageReport s : advice.history()) {
      s.remarks().forEach(r -> all.add("step " + LinesText.step(s) + ": " + r));
    }
    all.addAll(more);
    return all.isEmpty() ? "" : new Page().say("Remarks").items(all).toString();
  }

  private String cautions(List<String> general, Set<String> steps) {
    Map<String, Set<String>> stepsOf = new LinkedHashMap<>();
    for (Segment s : advice.schedule().segments()) {
      if (steps.contains(s.step())) {
        s.cautions()
            .forEach(c -> stepsOf.computeIfAbsent(c, k -> new LinkedHashSet<>()).add(s.step()));
      }
    }
    Map<Set<String>, List<String>> groups = new LinkedHashMap<>();
    stepsOf.forEach((c, at) -> groups.computeIfAbsent(at, k -> new ArrayList<>()).add(c));
    Page page = new Page();
    if (!general.isEmpty()) {
      page.heading("Cautions, always").items(general);
    }
    groups.forEach((at, said) -> page.heading("Cautions for " + String.join(", ", at)).items(said));
    return page.toString();
  }
}
