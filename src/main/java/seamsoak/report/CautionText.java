package seamsoak.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.schedule.StepKind;
import seamsoak.source.Caution;
import seamsoak.unit.UnitSystem;

/**
 * Cautions, each said once with the steps that it belongs to.
 *
 * @param general what always holds
 * @param steps where each of the others arises
 */
record CautionText(List<Caution> general, Map<Caution, Set<String>> steps, UnitSystem units) {
  /** Of the soak alone. */
  static CautionText soak(Advice advice, UnitSystem units) {
    return new CautionText(List.of(), schedule(advice, kind -> kind == StepKind.SOAK), units);
  }

  static CautionText schedule(Advice advice, UnitSystem units) {
    return new CautionText(advice.cautions(), schedule(advice, kind -> true), units);
  }

  /** Of the billet's own steps too. */
  static CautionText all(Advice advice, UnitSystem units) {
    Map<Caution, Set<String>> steps = new LinkedHashMap<>();
    advice.history().forEach(s -> s.cautions().forEach(c -> add(steps, c, s.kind())));
    schedule(advice, kind -> true).forEach((c, at) -> at.forEach(step -> add(steps, c, step)));
    return new CautionText(advice.cautions(), steps, units);
  }

  /** Where in the schedule each caution arises; its three refining steps count as one. */
  private static Map<Caution, Set<String>> schedule(Advice advice, Predicate<StepKind> wanted) {
    Map<Caution, Set<String>> steps = new LinkedHashMap<>();
    for (ScheduleAdvice.Step s : advice.schedule().steps()) {
      StepKind kind = s.step().kind();
      if (wanted.test(kind)) {
        s.cautions().forEach(c -> add(steps, c, kind.word()));
      }
    }
    return steps;
  }

  private static void add(Map<Caution, Set<String>> steps, Caution caution, String step) {
    steps.computeIfAbsent(caution, k -> new LinkedHashSet<>()).add(step);
  }

  /** What always holds first, then by the steps at which they arise. */
  Chapter chapter() {
    Chapter chapter = Chapter.of("cautions", "Cautions");
    if (!general.isEmpty()) {
      chapter = chapter.head("Always").items(said(general.stream()));
    }
    Map<Set<String>, List<Caution>> groups = new LinkedHashMap<>();
    steps.forEach((c, at) -> groups.computeIfAbsent(at, k -> new ArrayList<>()).add(c));
    for (Map.Entry<Set<String>, List<Caution>> e : groups.entrySet()) {
      chapter =
          chapter.head("For " + String.join(", ", e.getKey())).items(said(e.getValue().stream()));
    }
    return chapter;
  }

  /**
   * The worst of them. Among those of one gravity every step has its first before any has its
   * second; those that always hold come last.
   */
  Chapter worst(int most) {
    Map<Caution, Integer> place = new HashMap<>();
    Map<List<Object>, Integer> said = new HashMap<>();
    steps.forEach(
        (c, at) ->
            place.put(c, said.merge(List.of(c.gravity(), at.iterator().next()), 1, Integer::sum)));
    List<String> worst =
        said(
            Stream.concat(steps.keySet().stream(), general.stream())
                .sorted(
                    Comparator.comparing(Caution::gravity)
                        .thenComparing(c -> place.getOrDefault(c, Integer.MAX_VALUE))));
    return Chapter.of("cautions", "Cautions, the worst first").items(worst, most);
  }

  private List<String> said(Stream<Caution> cautions) {
    return cautions.map(c -> c.said(units)).toList();
  }
}
