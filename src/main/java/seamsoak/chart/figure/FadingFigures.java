package seamsoak.chart.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.plan.Advice;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.state.CrossingReport;
import seamsoak.state.LineReport;
import seamsoak.state.SeamSet;
import seamsoak.state.StageReport;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SeamWords;

/** Puts the lines of an advice into a {@link FadingFigure}. */
public record FadingFigures(Advice advice, UnitSystem units) {
  private static final int MOST = 4;

  /**
   * So near to 1 nobody can say whether it shows: a soak is chosen to end just there. Judgement.
   */
  private static final double EDGE = 0.1;

  /** Nothing where there are no seams. */
  public Optional<Figure> figure() {
    List<SeamSet> sets = SeamSet.deepest(advice.history(), MOST);
    if (sets.isEmpty()) {
      return Optional.empty();
    }
    List<FadingFigure.Column> steps = new ArrayList<>();
    List<List<LineReport>> lines = new ArrayList<>();
    for (StageReport s : advice.history()) {
      if (!s.lines().isEmpty()) {
        steps.add(new FadingFigure.Column(Integer.toString(s.step()), s.kind()));
        lines.add(s.lines());
      }
    }
    for (ScheduleAdvice.After a : advice.schedule().after()) {
      steps.add(new FadingFigure.Column("", a.step().words()));
      lines.add(a.lines());
    }
    List<FadingFigure.Trail> drawn =
        sets.stream()
            .map(
                set ->
                    new FadingFigure.Trail(
                        SeamWords.says(set.made()),
                        lines.stream().map(l -> state(set, l)).toList()))
            .toList();
    return Optional.of(
        new FadingFigure(
            "fading",
            "How the lines of " + advice.billet() + " fade",
            atTheEnd(lines.get(lines.size() - 1)),
            "Contrast of the line at each set of seams, which shows from 1 on, and its width, step by"
                + " step. "
                + words(drawn),
            units,
            steps,
            advice.schedule().after().size(),
            drawn));
  }

  private String atTheEnd(List<LineReport> lines) {
    List<ScheduleAdvice.After> after = advice.schedule().after();
    double line = lines.stream().mapToDouble(l -> l.contrast().orElse(0.0)).max().orElse(0);
    double knot =
        after.isEmpty()
            ? advice.soak().crossings().stream()
                .mapToDouble(CrossingReport::contrast)
                .max()
                .orElse(0)
            : after.get(after.size() - 1).crossingContrast();
    return line > 1 + EDGE
        ? "A line still shows at the end"
        : knot > 1 + EDGE
            ? "At the end only knots show, where seams cross"
            : line >= 1 - EDGE
                ? "At the end a line is just about gone"
                : knot >= 1 - EDGE
                    ? "At the end lines are gone, and knots, where seams cross, just about"
                    : "No line shows at the end";
  }

  private static String words(List<FadingFigure.Trail> sets) {
    StringBuilder words = new StringBuilder();
    for (FadingFigure.Trail set : sets) {
      double[] contrast =
          set.at().stream()
              .map(FadingFigure.State::contrast)
              .flatMapToDouble(OptionalDouble::stream)
              .toArray();
      words.append(
          String.format(
              Locale.ROOT,
              "%s: contrast %.1f at first, %.1f at the end. ",
              set.name(),
              contrast[0],
              contrast[contrast.length - 1]));
    }
    return words.toString().strip();
  }

  /**
   * A width only where a line shows: below that it is the width of nothing to be seen, and a little
   * carbide left at the seam makes it leap.
   */
  private static FadingFigure.State state(SeamSet set, List<LineReport> lines) {
    boolean shows = set.shows(lines);
    return new FadingFigure.State(
        set.contrast(lines),
        set.widthMm(lines)
            .filter(w -> shows)
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty()),
        shows);
  }
}
