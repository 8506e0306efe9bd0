package seamsoak.words;

import java.util.LinkedHashMap;
import java.util.Map;
import seamsoak.data.JsonWriter;
import seamsoak.schedule.Coolant;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepName;
import seamsoak.schedule.Task;
import seamsoak.unit.UnitSystem;

/**
 * The steps of a schedule as JSON tells them: sentences in metric units, beside each its kind, and
 * the kind of the step beside its name.
 */
final class StepsTold {
  private static final StepWords WORDS = new StepWords(UnitSystem.METRIC);

  private StepsTold() {}

  /** The members of a record. */
  static Map<String, Object> members(Record of) {
    Map<String, Object> told = new LinkedHashMap<>();
    JsonWriter.members(of).forEach((key, value) -> put(told, of, key, value));
    return told;
  }

  private static void put(Map<String, Object> told, Record of, String key, Object value) {
    if (value instanceof StepName name) {
      told.put(key, name.words());
      if (of instanceof ScheduleAdvice.Step) {
        told.put("kind", Told.kindOf(name.kind()));
        told.put("number", name.number() == 0 ? null : name.number());
      }
    } else if (value instanceof Heater in) {
      told.put(key, in.word());
    } else if (of instanceof ScheduleAdvice.Step s && value instanceof Task) {
      StepWords.Said said = WORDS.said(s.task());
      told.put("doing", said.doing());
      told.put("doingKind", Told.kindOf(s.task()));
      told.put("why", said.why());
      told.put("whyKind", Told.kindOf(s.task()));
    } else if (of instanceof ScheduleAdvice.Step s && key.equals("checks")) {
      told.put(key, WORDS.checks(s.checks()));
      told.put("checkKinds", s.checks().stream().map(Told::kindOf).toList());
    } else if (of instanceof ScheduleAdvice.Segment s && key.equals("cool")) {
      told.put(key, s.cool().map(Coolant::word).orElse(""));
    } else if (of instanceof ScheduleAdvice.Segment s && key.equals("task")) {
      told.put("why", s.task().map(WORDS::said).map(StepWords.Said::why).orElse(""));
      told.put("whyKind", s.task().map(Told::kindOf).orElse(""));
    } else if (of instanceof ScheduleAdvice.Segment s && key.equals("checks")) {
      told.put("check", String.join("; ", WORDS.checks(s.checks())));
      told.put("checkKinds", s.checks().stream().map(Told::kindOf).toList());
    } else {
      told.put(key, value);
    }
  }
}
