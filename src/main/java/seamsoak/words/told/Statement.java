package seamsoak.words.told;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import seamsoak.billet.Default;
import seamsoak.billet.OldWord;
import seamsoak.billet.Stage;
import seamsoak.data.JsonWriter;
import seamsoak.pairing.PairAdvice;
import seamsoak.safety.Stop;
import seamsoak.schedule.Coolant;
import seamsoak.schedule.Heater;
import seamsoak.schedule.Remark;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.ScheduleAdvice.Metal;
import seamsoak.schedule.ScheduleAdvice.ProgramLine;
import seamsoak.schedule.StepName;
import seamsoak.schedule.Task;
import seamsoak.schedule.demand.Conflict;
import seamsoak.soak.Input;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakNote;
import seamsoak.soak.SoakReason;
import seamsoak.state.HeatRisk;
import seamsoak.state.Joints;
import seamsoak.state.SeamProfile;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.BladeWords;
import seamsoak.words.ConflictWords;
import seamsoak.words.DefaultWords;
import seamsoak.words.FileWords;
import seamsoak.words.ScheduleRemarkWords;
import seamsoak.words.SeamWords;
import seamsoak.words.SoakWords;
import seamsoak.words.StageWords;
import seamsoak.words.StepWords;
import seamsoak.words.StopWords;
import seamsoak.words.pair.RemedyWords;

/**
 * What was decided, as JSON tells it: a sentence in metric units, its kind beside it.
 *
 * @param kind fixed, in lower case
 * @param says a sentence or part of one
 */
public record Statement(String kind, String says) {
  private static final SoakWords SOAK = new SoakWords(UnitSystem.METRIC);
  private static final ConflictWords CONFLICTS = new ConflictWords(UnitSystem.METRIC);
  private static final StepWords STEPS = new StepWords(UnitSystem.METRIC);

  /** How what is of a type is told. */
  private record Teller<V>(Class<V> type, Function<V, Object> kind, Function<V, String> says) {
    Statement told(Object value) {
      V own = type.cast(value);
      return new Statement(kindOf(kind.apply(own)), says.apply(own));
    }
  }

  private static final List<Teller<?>> TELLERS =
      List.of(
          new Teller<>(Stop.class, Stop::danger, new StopWords(UnitSystem.METRIC)::says),
          new Teller<>(Remark.class, r -> r, new ScheduleRemarkWords(UnitSystem.METRIC)::says),
          new Teller<>(SoakReason.class, SoakReason::kind, SOAK::reason),
          new Teller<>(SoakAdvice.OptionRemark.class, r -> r, SOAK::remark),
          new Teller<>(SoakNote.Remedy.class, SoakNote.Remedy::measure, SOAK::note),
          new Teller<>(SoakNote.class, n -> n, SOAK::note),
          new Teller<>(Input.class, i -> i, SOAK::input),
          new Teller<>(Default.class, Default::what, new DefaultWords(UnitSystem.METRIC)::says),
          new Teller<>(OldWord.class, OldWord::kind, FileWords::old),
          new Teller<>(Stage.Remark.class, r -> r, StageWords::remark),
          new Teller<>(HeatRisk.class, HeatRisk::kind, r -> StageWords.heat(r, UnitSystem.METRIC)),
          new Teller<>(SeamProfile.Moment.class, m -> m, SeamWords::moment),
          new Teller<>(PairAdvice.Assumption.class, a -> a, RemedyWords::assumed),
          new Teller<>(
              PairAdvice.Remark.class, r -> r, new RemedyWords(UnitSystem.METRIC)::remark));

  private static Optional<Statement> of(Object value) {
    return value instanceof Statement t
        ? Optional.of(t)
        : TELLERS.stream()
            .filter(t -> t.type.isInstance(value))
            .findFirst()
            .map(t -> t.told(value));
  }

  private static Map<String, Object> conflict(Conflict c) {
    ConflictWords.Sentences sentences = CONFLICTS.said(c);
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("kind", kindOf(c));
    told.put("about", sentences.about());
    told.put("steels", c.steels());
    told.put("says", sentences.says());
    told.put("todo", sentences.todo());
    if (c instanceof Conflict.UnknownMade u) {
      told.put("mayBe", JsonWriter.members(u.mayBe()));
    }
    return told;
  }

  /** The name of a constant or of a record, such as {@code last-to-clear}. */
  public static String kindOf(Object of) {
    return of instanceof Enum<?> e
        ? e.name().toLowerCase(Locale.ROOT).replace('_', '-')
        : kindOf(of.getClass());
  }

  public static String kindOf(Class<?> type) {
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
    JsonWriter.members(of).forEach((key, value) -> put(told, of, key, value));
    if (of instanceof Metal m) {
      put(told, "structure", new Statement(kindOf(m.structure()), BladeWords.structure(m)));
    } else if (of instanceof ProgramLine l) {
      put(told, "then", new Statement(kindOf(l.then()), BladeWords.then(l)));
    }
    if (of instanceof SoakAdvice soak && soak.dominant().isEmpty()) {
      told.put("dominant", "none");
      told.put("dominantKind", "none");
    }
    if (of instanceof SoakAdvice.Recommended r) {
      told.put("onlyIfShows", r.reason().first());
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

  /** Of a step and of its segments its sentences stand where its task and its checks do. */
  private static void put(Map<String, Object> told, Record of, String key, Object value) {
    if (of instanceof ScheduleAdvice.Step && value instanceof StepName name) {
      told.put(key, name.words());
      told.put("kind", kindOf(name.kind()));
      told.put("number", name.number() == 0 ? null : name.number());
    } else if (of instanceof ScheduleAdvice.Step && value instanceof Task task) {
      StepWords.Order order = STEPS.said(task);
      told.put("doing", order.doing());
      told.put("doingKind", kindOf(task));
      told.put("why", order.why());
    } else if (of instanceof ScheduleAdvice.Step s && key.equals("checks")) {
      told.put(key, STEPS.checks(s.checks()));
      told.put("checkKinds", s.checks().stream().map(Statement::kindOf).toList());
    } else if (of instanceof ScheduleAdvice.Segment s && key.equals("cool")) {
      told.put(key, s.cool().map(Coolant::word).orElse(""));
    } else if (of instanceof ScheduleAdvice.Segment s && key.equals("task")) {
      told.put("why", s.task().map(STEPS::said).map(StepWords.Order::why).orElse(""));
      told.put("whyKind", s.task().map(Statement::kindOf).orElse(""));
    } else if (of instanceof ScheduleAdvice.Segment s && key.equals("checks")) {
      told.put("check", String.join("; ", STEPS.checks(s.checks())));
      told.put("checkKinds", s.checks().stream().map(Statement::kindOf).toList());
    } else {
      put(told, key, value);
    }
  }

  /** Adds a member, its kind beside it. */
  public static void put(Map<String, Object> told, String key, Object value) {
    Object plain = value instanceof Optional<?> o ? o.orElse(null) : value;
    Optional<Statement> one = of(plain);
    if (one.isPresent()) {
      told.put(key, one.get().says);
      told.put(key + "Kind", one.get().kind);
    } else if (plain instanceof StepName name) {
      told.put(key, name.words());
    } else if (plain instanceof Heater in) {
      told.put(key, in.word());
    } else if (plain instanceof Joints j) {
      boolean own = key.equals("joints");
      told.put(own ? "name" : key, SeamWords.name(j));
      told.put(own ? "step" : key + "Step", j.made().step());
      told.put(own ? "kind" : key + "Kind", j.made().kind());
    } else if (plain instanceof List<?> list && list.stream().anyMatch(v -> of(v).isPresent())) {
      List<Statement> all = new ArrayList<>();
      list.forEach(v -> all.add(of(v).orElseThrow()));
      told.put(key, all.stream().map(Statement::says).toList());
      told.put(key.replaceFirst("s$", "") + "Kinds", all.stream().map(Statement::kind).toList());
    } else {
      told.put(key, value);
    }
  }
}
