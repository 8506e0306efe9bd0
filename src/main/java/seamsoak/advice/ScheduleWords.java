package seamsoak.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.advice.ScheduleAdvice.After;
import seamsoak.advice.ScheduleAdvice.Conflict;
import seamsoak.billet.Kiln;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/** Says in sentences what to know of a schedule as a whole. */
record ScheduleWords(LineVisibility visibility, UnitSystem units) {
  List<String> remarks(Workpiece start, Course course, List<Conflict> conflicts, Guard guard) {
    List<String> all = new ArrayList<>(contributions(start, course));
    all.add(
        "Normalizing hides a faint line more by its finer structure than by moving carbon: it may"
            + " come back after an anneal.");
    for (ScheduleStep step : course.planned()) {
      outside(step, course).forEach(all::add);
    }
    kiln(course).ifPresent(all::add);
    List<SteelNow> steels = course.steels();
    if (steels.size() > 1) {
      all.add(
          "The temperatures rest on the carbon that each of "
              + steels.stream().map(SteelNow::id).collect(Collectors.joining(", "))
              + " has after the soak.");
    }
    all.add(
        "Color tells a heat to 50 C (90 F) at best, and no two tables agree on its words; trust a"
            + " thermocouple that was checked.");
    return List.copyOf(all);
  }

  /** Steps outside what the sheets of its steels print. */
  private List<String> outside(ScheduleStep step, Course course) {
    List<String> all = new ArrayList<>();
    Optional<Leg> hold = step.hold();
    if (hold.isEmpty()) {
      return all;
    }
    double at = hold.get().toC();
    for (SteelNow s : course.steels()) {
      range(step, s)
          .filter(r -> at < r.lowC() - 0.5 || at > r.highC() + 0.5)
          .ifPresent(
              r ->
                  all.add(
                      "The "
                          + step.name()
                          + " at "
                          + show(at)
                          + " lies outside the published range of "
                          + s.id()
                          + ", "
                          + show(r.lowC())
                          + (r.lowC() == r.highC() ? "" : " to " + show(r.highC()))
                          + ": "
                          + reason(step, s)
                          + "."));
    }
    return all;
  }

  private static Optional<TemperatureRange> range(ScheduleStep step, SteelNow s) {
    return switch (step.name()) {
      case "normalize" -> s.steel().heatTreatment().normalize();
      case "anneal" -> s.steel().heatTreatment().anneal();
      case "harden" -> s.steel().heatTreatment().harden();
      case "temper 1" -> s.steel().heatTreatment().temper();
      default -> Optional.empty();
    };
  }

  private static String reason(ScheduleStep step, SteelNow s) {
    if (!s.hardens()) {
      return "it does not harden, so the other steel decides";
    }
    return switch (step.name()) {
      case "anneal" ->
          step.doing().startsWith("Sub")
              ? "a sub-critical anneal stays below what the first of its steels changes at; the"
                  + " printed range is of a slow anneal"
              : "no heat lies in the ranges of all its steels, and the one that hardens most deeply"
                  + " decides";
      case "temper 1" -> "the hardness that is wanted at the edge asks for it";
      default -> "the other steel needs it, or the carbon has moved";
    };
  }

  private Optional<String> kiln(Course course) {
    Kiln kiln = course.billet.equipment().kilnTaken();
    if (!kiln.there()) {
      return Optional.of(
          "Without a kiln the holds are only as good as the fire is even; long anneals in a forge are"
              + " a hope.");
    }
    List<String> over =
        course.planned().stream()
            .filter(s -> s.in() != Heater.KILN && s.hold().isPresent())
            .filter(s -> s.hottestC() > kiln.highestTaken().celsius())
            .map(ScheduleStep::name)
            .toList();
    return over.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The kiln goes to "
                + show(kiln.highestTaken().celsius())
                + ": "
                + String.join(", ", over)
                + " is for the forge.");
  }

  /** What the soak and what the cycles do for the deepest line, so that nobody soaks twice. */
  private List<String> contributions(Workpiece start, Course course) {
    double before = deepest(LineReport.of(start, visibility));
    if (before <= 0) {
      return List.of();
    }
    List<After> after = course.after();
    Optional<After> soaked = after.stream().filter(a -> a.step().equals("soak")).findFirst();
    double middle = soaked.map(After::deepestDipPct).orElse(before);
    double end =
        after.stream()
            .filter(a -> a.step().startsWith("refine") || a.step().equals("normalize"))
            .reduce((a, b) -> b)
            .map(After::deepestDipPct)
            .orElse(middle);
    double whole = before - end;
    String share =
        whole > 0.005
            ? String.format(
                Locale.ROOT,
                " Of what is cleared, the soak clears %.0f %% and they %.0f %%.",
                100 * (before - middle) / whole,
                100 * (middle - end) / whole)
            : "";
    return List.of(
        String.format(
            Locale.ROOT,
            "The deepest line misses %.2f %% carbon before; %snormalizing and the cycles take it to"
                + " %.2f %%.%s",
            before,
            soaked.isPresent()
                ? String.format(Locale.ROOT, "the soak takes it to %.2f %%, ", middle)
                : "without a soak, ",
            end,
            share));
  }

  /** The deepest dip of all, wt%. */
  static double deepest(List<LineReport> lines) {
    return lines.stream().mapToDouble(LineReport::dipPct).max().orElse(0);
  }

  private String show(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }
}
