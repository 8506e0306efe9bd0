package seamsoak.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Default;
import seamsoak.billet.Stage;
import seamsoak.data.JsonWriter;
import seamsoak.pairing.PairAdvice;
import seamsoak.safety.Stop;
import seamsoak.schedule.Conflict;
import seamsoak.schedule.Remark;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvice.Metal;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.schedule.StepName;
import seamsoak.soak.Input;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakNote;
import seamsoak.soak.SoakReason;
import seamsoak.state.Joints;
import seamsoak.state.SeamProfile;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;

/**
 * What was decided, as JSON tells it: a sentence in metric units, its kind beside it.
 *
 * @param kind fixed, in lower case
 * @param says a sentence or part of one
 */
public record Told(String kind, String says) {
  private static final SoakWords SOAK = new SoakWords(UnitSystem.METRIC);
  private static final ConflictWords CONFLICTS = new ConflictWords(UnitSystem.METRIC);
  private static final ScheduleRemarkWords REMARKS = new ScheduleRemarkWords(UnitSystem.METRIC);
  private static final StopWords STOPS = new StopWords(UnitSystem.METRIC);

  private static Optional<Told> of(Object value) {
    if (value instanceof Told t) {
      return Optional.of(t);
    }
    if (value instanceof Stop s) {
      return Optional.of(new Told(kindOf(s.danger()), STOPS.says(s)));
    }
    if (value instanceof Remark r) {
      return Optional.of(new Told(kindOf(r), REMARKS.says(r)));
    }
    if (value instanceof SoakReason r) {
      return Optional.of(new Told(kindOf(r.kind()), SOAK.reason(r)));
    }
    if (value instanceof SoakAdvice.OptionRemark r) {
      return Optional.of(new Told(kindOf(r), SOAK.remark(r)));
    }
    if (value instanceof SoakNote n) {
      Object kind = n instanceof SoakNote.Remedy r ? r.measure() : n;
      return Optional.of(new Told(kindOf(kind), SOAK.note(n)));
    }
    if (value instanceof Input i) {
      return Optional.of(new Told(kindOf(i), SOAK.input(i)));
    }
    if (value instanceof Default d) {
      return Optional.of(new Told(kindOf(d.what()), new DefaultWords(UnitSystem.METRIC).says(d)));
    }
    if (value instanceof Stage.Remark r) {
      return Optional.of(new Told(kindOf(r), StageWords.remark(r)));
    }
    if (value instanceof SeamProfile.Moment m) {
      return Optional.of(new Told(kindOf(m), SeamWords.moment(m)));
    }
    if (value instanceof PairAdvice.Assumption a) {
      return Optional.of(new Told(kindOf(a), RemedyWords.assumed(a)));
    }
    if (value instanceof PairAdvice.Remark r) {
      return Optional.of(new Told(kindOf(r), RemedyWords.remark(r)));
    }
    return Optional.empty();
  }

  private static Map<String, Object> conflict(Conflict c) {
    ConflictWords.Sentences sentences = CONFLICTS.said(c);
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("kind", kindOf(c));
    told.put("about", sentences.about());
    told.put("steels", c.steels());
    told.put("says", sentences.says());
    told.put("todo", sentences.todo());
    return told;
  }

  /** The name of a constant or of a record, such as {@code last-to-clear}. */
  static String kindOf(Object of) {
    return of instanceof Enum<?> e
        ? e.name().toLowerCase(Locale.ROOT).replace('_', '-')
        : kindOf(of.getClass());
  }

  static String kindOf(Class<?> type) {
    return type.getSimpleName().replaceAll("(?<=.)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }

  /**
   * The members of a record. Beside {@code reason} stands {@code reasonKind}, beside {@code
   * remarks} their {@code remarkKinds} in the same order, beside seams their kind and step.
   */
  public static Map<String, Object> members(Record of) {
    if (of instanceof Conflict c) {
      return conflict(c);
    }
    Map<String, Object> told = new LinkedHashMap<>();
    if (of instanceof ScheduleAdvice.Step || of instanceof ScheduleAdvice.Segment) {
      StepsTold.members(of).forEach((key, value) -> put(told, key, value));
      return told;
    }
    JsonWriter.members(of).forEach((key, value) -> put(told, key, value));
    if (of instanceof Metal m) {
      put(told, "structure", new Told(kindOf(m.structure()), BladeWords.structure(m)));
    } else if (of instanceof ProgramLine l) {
      put(told, "then", new Told(kindOf(l.then()), BladeWords.then(l)));
    }
    if (of instanceof SoakAdvice soak && soak.dominant().isEmpty()) {
      told.put("dominant", "none");
      told.put("dominantKind", "none");
    }
    if (of instanceof PairAdvice pair) {
      told.put("checks", PairTold.checks(pair));
      told.put("remedies", PairTold.remedies(pair));
      told.putIfAbsent("remarkKinds", List.of());
    }
    if (of instanceof SoakAdvice.SoakOption || of instanceof StageReport) {
      told.putIfAbsent("remarkKinds", List.of());
    }
    return told;
  }

  /** Adds a member, its kind beside it. */
  public static void put(Map<String, Object> told, String key, Object value) {
    Object plain = value instanceof Optional<?> o ? o.orElse(null) : value;
    Optional<Told> one = of(plain);
    if (one.isPresent()) {
      told.put(key, one.get().says);
      told.put(key + "Kind", one.get().kind);
    } else if (plain instanceof StepName name) {
      told.put(key, name.words());
    } else if (plain instanceof Joints j) {
      boolean own = key.equals("joints");
      told.put(own ? "name" : key, SeamWords.name(j));
      told.put(own ? "step" : key + "Step", j.made().step());
      told.put(own ? "kind" : key + "Kind", j.made().kind());
    } else if (plain instanceof List<?> list && list.stream().anyMatch(v -> of(v).isPresent())) {
      List<Told> all = new ArrayList<>();
      list.forEach(v -> all.add(of(v).orElseThrow()));
      told.put(key, all.stream().map(Told::says).toList());
      told.put(key.replaceFirst("s$", "") + "Kinds", all.stream().map(Told::kind).toList());
    } else {
      told.put(key, value);
    }
  }
}
