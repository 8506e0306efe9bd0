package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.words.StopWords;

/** The steps one by one: what to do, why, what to look for. */
record StepsText(Advice advice, Shown shown) {
  String page() {
    Page page = new Page().say("Step by step");
    StopWords stops = new StopWords(shown.units());
    List<ScheduleAdvice.Step> steps = advice.schedule().steps();
    for (int i = 0; i < steps.size(); i++) {
      ScheduleAdvice.Step s = steps.get(i);
      page.point((i + 1) + ". " + s.step() + place(s) + ": " + s.doing() + ".");
      s.refused().ifPresent(r -> page.below("Refused. " + stops.says(r)));
      page.below("Why: " + s.why() + ".");
      s.checks().forEach(c -> page.below("Check: " + c + "."));
    }
    return page.toString();
  }

  /** The same as terms: a step, and what is said of it. */
  List<Part.Term> terms() {
    List<Part.Term> all = new ArrayList<>();
    StopWords stops = new StopWords(shown.units());
    for (ScheduleAdvice.Step s : advice.schedule().steps()) {
      List<String> said = new ArrayList<>();
      s.refused().ifPresent(r -> said.add("Refused. " + stops.says(r)));
      said.add(s.doing() + ".");
      said.add("Why: " + s.why() + ".");
      s.checks().forEach(c -> said.add("Check: " + c + "."));
      all.add(new Part.Term(s.step() + place(s), said));
    }
    return all;
  }

  private String place(ScheduleAdvice.Step s) {
    String hold = s.holdMinutes().map(m -> shown.time(m) + " once the core is there").orElse("");
    String in = s.in().equals("bench") ? "" : s.in();
    String both = in + (in.isEmpty() || hold.isEmpty() ? "" : ", ") + hold;
    return both.isEmpty() ? "" : " (" + both + ")";
  }
}
