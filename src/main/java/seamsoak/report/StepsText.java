package seamsoak.report;

import java.util.ArrayList;
import java.util.List;
import seamsoak.plan.Advice;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.words.StepWords;
import seamsoak.words.StopWords;

/** The steps one by one: what to do, why, what to look for. */
record StepsText(Advice advice, Shown shown) {
  String page() {
    Page page = new Page().say("Step by step");
    StopWords stops = new StopWords(shown.units());
    List<ScheduleAdvice.Step> steps = advice.schedule().steps();
    for (int i = 0; i < steps.size(); i++) {
      ScheduleAdvice.Step s = steps.get(i);
      StepWords.Said said = words().said(s.task());
      page.point((i + 1) + ". " + s.step().words() + place(s) + ": " + said.doing() + ".");
      s.refused().ifPresent(r -> page.below("Refused. " + stops.says(r)));
      page.below("Why: " + said.why() + ".");
      words().checks(s.checks()).forEach(c -> page.below("Check: " + c + "."));
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
      StepWords.Said task = words().said(s.task());
      said.add(task.doing() + ".");
      said.add("Why: " + task.why() + ".");
      words().checks(s.checks()).forEach(c -> said.add("Check: " + c + "."));
      all.add(new Part.Term(s.step().words() + place(s), said));
    }
    return all;
  }

  private StepWords words() {
    return new StepWords(shown.units());
  }

  private String place(ScheduleAdvice.Step s) {
    String hold = s.holdMinutes().map(m -> shown.time(m) + " once the core is there").orElse("");
    String in = s.in() == Heater.BENCH ? "" : s.in().word();
    String both = in + (in.isEmpty() || hold.isEmpty() ? "" : ", ") + hold;
    return both.isEmpty() ? "" : " (" + both + ")";
  }
}
