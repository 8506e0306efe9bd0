package seamsoak.words;

import java.util.LinkedHashMap;
import java.util.Locale;
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
public final class StepsTold {
  private static final StepWords WORDS = new StepWords(UnitSystem.METRIC);

  private StepsTold() {}

  /** The name of a constant or of a record, such as {@code full-anneal}. */
  static String kind(Object of) {
    return of instanceof Enum<?> e
        ? e.name().toLowerCase(Locale.ROOT).replace('_', '-')
        : of.getClass().getSimpleName().replaceAll("(?<=.)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }

  /** The members of a record. */
  public static Map<String, Object> members(Record of) {
    Map<String, Object> told = new LinkedHashMap<>();
    JsonWriter.members(of).forEach((key, value) -> put(told, of, key, value));
    return told;
  }

  private static void put(Map<String, Object> told, Record of, String key, Object value) {
    if (value instanceof StepName name) {
      told.put(key, name.words());
      if (of instanceof ScheduleAdvice.Step) {
        told.put("kind", kind(name.kind()));
        told.put("number", name.number() == 0 ? null : name.number());
      }
    } else if (value instanceof Heater in) {
      told.put(key, in.word());
    } else if (of instanceof ScheduleAdvice.Step s && value instanceof Task) {
      StepWords.Said said = WORDS.said(s.task());
      told.put("doing", said.doing());
      told.put("doingKind", kind(s.task()));
      told.put("why", said.why());
      told.put("whyKind", kind(s.task()));
    } else if (of instanceof ScheduleAdvice.Step s && key.equals("checks")) {
      told.put(key, WORDS.checks(s.checks()));
      told.put("checkKinds", s.checks().stream().map(StepsTold::kind).toList());
    } else if (of instanceof ScheduleAdvice.Segment s && key.equals("cool")) {
      told.put(key, s.cool().map(Coolant::word).orElse(""));
    } else if (of instanceof ScheduleAdvice.Segment s && key.equals("task")) {
      told.put("why", s.task().map(WORDS::said).map(StepWords.Said::why).orElse(""));
      told.put("whyKind", s.task().map(StepsTold::kind).orElse(""));
    } else if (of instanceof ScheduleAdvice.Segment s && key.equals("checks")) {
      told.put("check", String.join("; ", WORDS.checks(s.checks())));
      told.put("checkKinds", s.checks().stream().map(StepsTold::kind).toList());
    } else {
      told.put(key, value);
    }
  }
}
