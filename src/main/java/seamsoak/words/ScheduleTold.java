package seamsoak.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import seamsoak.plan.Advice;
import seamsoak.safety.Stop;
import seamsoak.schedule.Conflict;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvice.Metal;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.unit.UnitSystem;

/** Schedules and stops as JSON tells them: sentences in metric units, beside each its kind. */
public final class ScheduleTold {
  private static final ConflictWords CONFLICTS = new ConflictWords(UnitSystem.METRIC);
  private static final ScheduleRemarkWords REMARKS = new ScheduleRemarkWords(UnitSystem.METRIC);
  private static final StopWords STOPS = new StopWords(UnitSystem.METRIC);

  private ScheduleTold() {}

  /** The members of a record. */
  public static Map<String, Object> members(Record of) {
    Map<String, Object> told = new LinkedHashMap<>();
    if (of instanceof Conflict c) {
      ConflictWords.Sentences sentences = CONFLICTS.said(c);
      told.put("kind", kind(c));
      told.put("about", sentences.about());
      told.put("steels", c.steels());
      told.put("says", sentences.says());
      told.put("todo", sentences.todo());
      return told;
    }
    StepsTold.members(of).forEach(told::put);
    if (of instanceof Metal m) {
      told.put("structure", BladeWords.structure(m));
      told.put("structureKind", kind(m.structure()));
    } else if (of instanceof ProgramLine l) {
      told.put("then", BladeWords.then(l));
      told.put("thenKind", kind(l.then()));
    } else if (of instanceof ScheduleAdvice.Step s) {
      Optional<Stop> refused = s.refused();
      told.put("refused", refused.map(STOPS::says));
      told.put("refusedKind", refused.map(r -> kind(r.danger())));
    } else if (of instanceof ScheduleAdvice a) {
      told.put("remarks", a.remarks().stream().map(REMARKS::says).toList());
      told.put("remarkKinds", a.remarks().stream().map(ScheduleTold::kind).toList());
    } else if (of instanceof Advice a) {
      stops(told, a.hardStops());
    }
    return told;
  }

  /** Why the work must not be done as written. */
  public static void stops(Map<String, Object> told, List<Stop> stops) {
    told.put("hardStops", stops.stream().map(STOPS::says).toList());
    told.put("hardStopKinds", stops.stream().map(s -> kind(s.danger())).toList());
  }

  /** The name of a constant or of a record, such as {@code soft-layer}. */
  static String kind(Object of) {
    return of instanceof Enum<?> e
        ? e.name().toLowerCase(Locale.ROOT).replace('_', '-')
        : kind(of.getClass());
  }

  static String kind(Class<?> type) {
    return type.getSimpleName().replaceAll("(?<=.)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }
}
