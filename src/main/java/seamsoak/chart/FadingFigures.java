package seamsoak.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import seamsoak.advice.Advice;
import seamsoak.advice.LineReport;
import seamsoak.advice.ScheduleAdvice;
import seamsoak.advice.StageReport;
import seamsoak.billet.Visible;
import seamsoak.unit.UnitSystem;

/** Puts the lines of an advice into a {@link FadingFigure}. */
record FadingFigures(Advice advice, Visible visible, UnitSystem units) {
  private static final int MOST = 4;

  /** Nothing where there are no seams. */
  Optional<Figure> figure() {
    List<Integer> sets = sets();
    if (sets.isEmpty()) {
      return Optional.empty();
    }
    List<FadingFigure.Step> steps = new ArrayList<>();
    List<List<LineReport>> lines = new ArrayList<>();
    for (StageReport s : advice.history()) {
      if (!s.lines().isEmpty()) {
        steps.add(new FadingFigure.Step(Integer.toString(s.step()), s.kind()));
        lines.add(s.lines());
      }
    }
    for (ScheduleAdvice.After a : advice.schedule().after()) {
      steps.add(new FadingFigure.Step("", a.step()));
      lines.add(a.lines());
    }
    int shown = (int) lines.get(lines.size() - 1).stream().filter(LineReport::visible).count();
    List<FadingFigure.SeamSet> drawn =
        sets.stream()
            .map(
                set ->
                    new FadingFigure.SeamSet(
                        name(set), lines.stream().map(l -> state(set, l)).toList()))
            .toList();
    return Optional.of(
        new FadingFigure(
            "fading",
            "How the lines of " + advice.billet() + " fade",
            shown == 0 ? "No line shows at the end" : "A line still shows at the end",
            "Carbon missing at each set of seams and width of its line, step by step. "
                + words(drawn),
            units,
            steps,
            advice.schedule().after().size(),
            drawn,
            visible.dipTaken().value(),
            visible.widthTaken().millimetres()));
  }

  private static String words(List<FadingFigure.SeamSet> sets) {
    StringBuilder words = new StringBuilder();
    for (FadingFigure.SeamSet set : sets) {
      double[] missing =
          set.at().stream()
              .map(FadingFigure.State::missingPct)
              .flatMapToDouble(OptionalDouble::stream)
              .toArray();
      words.append(
          String.format(
              Locale.ROOT,
              "%s: %.2f %% missing at first, %.2f %% at the end. ",
              set.name(),
              missing[0],
              missing[missing.length - 1]));
    }
    return words.toString().strip();
  }

  /** The sets of seams by the step that made them; when there are many, those deepest now. */
  private List<Integer> sets() {
    Set<Integer> all = new TreeSet<>();
    advice.history().forEach(s -> s.lines().forEach(l -> all.add(l.step())));
    List<LineReport> last = advice.history().get(advice.history().size() - 1).lines();
    return all.stream()
        .sorted(Comparator.comparingDouble(s -> -state(s, last).missingPct().orElse(0)))
        .limit(MOST)
        .sorted()
        .toList();
  }

  private String name(int set) {
    return advice.history().stream()
        .filter(s -> s.step() == set && set > 0)
        .map(s -> s.kind() + " " + set)
        .findFirst()
        .orElse("layers");
  }

  private static FadingFigure.State state(int set, List<LineReport> lines) {
    List<LineReport> own = lines.stream().filter(l -> l.step() == set).toList();
    return new FadingFigure.State(
        own.stream().mapToDouble(LineReport::dipPct).max(),
        own.stream().flatMap(l -> l.widthMm().stream()).mapToDouble(w -> w).max(),
        own.stream().anyMatch(LineReport::visible));
  }
}
