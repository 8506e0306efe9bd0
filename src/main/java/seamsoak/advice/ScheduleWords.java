package seamsoak.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import seamsoak.advice.ScheduleAdvice.After;
import seamsoak.advice.ScheduleAdvice.CriticalTemperatures;
import seamsoak.advice.ScheduleAdvice.Segment;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.steel.Steel;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/** Says in sentences what to know of a schedule as a whole. */
record ScheduleWords(List<Steel> steels, LineVisibility visibility, UnitSystem units) {
  List<String> remarks(
      Workpiece start,
      List<Segment> segments,
      List<After> after,
      List<CriticalTemperatures> critical) {
    List<String> all = new ArrayList<>(contributions(start, after));
    all.add(
        "Normalizing hides a faint line more by its finer structure than by moving carbon: it may"
            + " come back after an anneal.");
    double normalize =
        segments.stream()
            .filter(s -> s.step().equals("normalize") && s.kind().equals("hold"))
            .findFirst()
            .orElseThrow()
            .toC();
    for (Steel steel : steels) {
      steel
          .heatTreatment()
          .normalize()
          .filter(r -> normalize < r.lowC() - 0.5 || normalize > r.highC() + 0.5)
          .ifPresent(
              r ->
                  all.add(
                      "Normalizing at "
                          + show(normalize)
                          + " lies outside the published range of "
                          + steel.id()
                          + ", "
                          + show(r.lowC())
                          + " to "
                          + show(r.highC())
                          + ": the other steel needs it, or the carbon has moved."));
      if (steel.category().startsWith("tool (air") || steel.category().startsWith("stainless")) {
        all.add(
            steel.id()
                + " hardens in air or is not normalized at all: this schedule is not for it; follow"
                + " its sheet.");
      }
    }
    if (critical.size() > 1) {
      String names =
          critical.stream().map(CriticalTemperatures::steel).collect(Collectors.joining(", "));
      all.add("The temperatures rest on the carbon that each of " + names + " has after the soak.");
    }
    return List.copyOf(all);
  }

  /** What the soak and what the cycles do for the deepest line, so that nobody soaks twice. */
  private List<String> contributions(Workpiece start, List<After> after) {
    double before = deepest(LineReport.of(start, visibility));
    if (before <= 0) {
      return List.of();
    }
    boolean soaked = after.get(0).step().equals("soak");
    double middle = soaked ? after.get(0).deepestDipPct() : before;
    double end = after.get(after.size() - 1).deepestDipPct();
    String soak =
        soaked
            ? String.format(Locale.ROOT, "the soak takes it to %.2f %%, ", middle)
            : "without a soak, ";
    return List.of(
        String.format(
            Locale.ROOT,
            "The deepest line misses %.2f %% carbon before; %snormalizing and the cycles take it to"
                + " %.2f %%.",
            before,
            soak,
            end));
  }

  /** The deepest dip of all, wt%. */
  static double deepest(List<LineReport> lines) {
    return lines.stream().mapToDouble(LineReport::dipPct).max().orElse(0);
  }

  private String show(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }
}
