package seamsoak.report;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import seamsoak.data.JsonWriter;
import seamsoak.safety.Stop;
import seamsoak.schedule.Conflict;
import seamsoak.schedule.Remark;
import seamsoak.schedule.ScheduleAdvice.Metal;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.unit.UnitSystem;
import seamsoak.words.BladeWords;
import seamsoak.words.ConflictWords;
import seamsoak.words.ScheduleRemarkWords;
import seamsoak.words.StopWords;

/** What JSON has for what was decided: a fixed kind, and beside it the words, always metric. */
final class JsonWords {
  private static final UnitSystem METRIC = UnitSystem.METRIC;

  private JsonWords() {}

  /** That of a value; the value itself where it needs no words. */
  static Object of(Object value) {
    if (value instanceof Conflict c) {
      Map<String, Object> all = kind(c);
      all.put("steels", c.steels());
      all.putAll(JsonWriter.members(new ConflictWords(METRIC).of(c)));
      return all;
    }
    if (value instanceof Remark r) {
      return says(kind(r), new ScheduleRemarkWords(METRIC).says(r));
    }
    if (value instanceof Stop s) {
      Map<String, Object> all = kind(s.danger());
      all.put("step", s.step());
      return says(all, new StopWords(METRIC).says(s));
    }
    if (value instanceof Metal m) {
      Map<String, Object> all = kind(m.structure());
      all.putAll(JsonWriter.members(m));
      all.put("structure", BladeWords.structure(m));
      return all;
    }
    if (value instanceof ProgramLine l) {
      Map<String, Object> all = kind(l.then());
      all.putAll(JsonWriter.members(l));
      all.put("then", BladeWords.then(l));
      return all;
    }
    return value;
  }

  private static Map<String, Object> kind(Object of) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("kind", name(of));
    return all;
  }

  /** The name of an enum's constant or of a record, as in {@code soft-layer}. */
  static String name(Object of) {
    String name =
        of instanceof Enum<?> constant
            ? constant.name().replace('_', '-')
            : of.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-");
    return name.toLowerCase(Locale.ROOT);
  }

  private static Map<String, Object> says(Map<String, Object> all, String words) {
    all.put("says", words);
    return all;
  }
}
