package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import seamsoak.billet.Equipment;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.schedule.ScheduleAdvice.After;
import seamsoak.state.LineReport;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/** Says in sentences what to know of a schedule as a whole. */
record ScheduleWords(LineVisibility visibility, UnitSystem units) {
  /** A change too small to speak of, wt%. */
  private static final double LEAST_CLEARED_PCT = 0.005;

  List<String> remarks(Workpiece start, Course course) {
    List<String> all = new ArrayList<>(contributions(start, course));
    all.add(
        "Normalizing hides a faint line more by its finer structure than by moving carbon: it may"
            + " come back after an anneal.");
    for (ScheduleStep step : course.planned()) {
      outside(step, course).forEach(all::add);
    }
    all.addAll(fires(course));
    List<SteelNow> steels = course.steels();
    if (steels.size() > 1) {
      all.add(
          "The temperatures rest on the carbon that each of "
              + steels.stream().map(SteelNow::id).collect(Collectors.joining(", "))
              + " has by then.");
    }
    all.add(
        "Color tells a heat to "
            + units.show("90 F", "50 C")
            + " at best, and no two tables agree on its words; trust a thermocouple that was"
            + " checked.");
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
                          + reason(step, s, r, course)
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

  /** Why a step leaves the range that a sheet prints for a steel. */
  private String reason(ScheduleStep step, SteelNow s, TemperatureRange range, Course course) {
    double at = step.hold().orElseThrow().toC();
    if (!s.hardens()) {
      return "it does not harden, so the others decide";
    }
    if (step.name().equals("harden") && s.ownHeat()) {
      return "this is the heat of the others, and it stays soft there";
    }
    if (Math.abs(at - Math.max(range.lowC(), Math.min(range.highC(), at))) < HardeningHeat.NEAR) {
      return "as near as a kiln can tell, and it suits the others better";
    }
    if (step.name().equals("anneal") && step.doing().startsWith("Sub")) {
      return range.highC() > s.ac1C()
          ? "a sub-critical anneal stays below what the first of its steels changes at; the printed"
              + " range is of a slow anneal"
          : "another steel begins to change there, and nothing must";
    }
    if (step.name().equals("anneal") && step.doing().startsWith("Spheroidize")) {
      return "carbide has to be left to gather, and the range printed for it would dissolve all of"
          + " it, or nothing, with the carbon that there is";
    }
    if (step.name().equals("temper 1")) {
      return "the hardness that is wanted at the edge asks for it";
    }
    List<String> within =
        course.steels().stream()
            .filter(SteelNow::hardens)
            .filter(
                o ->
                    range(step, o)
                        .filter(r -> at > r.lowC() - 0.5 && at < r.highC() + 0.5)
                        .isPresent())
            .map(SteelNow::id)
            .toList();
    return within.isEmpty()
        ? "its carbon has moved since it was bought, and with it the heat it needs"
        : "their ranges do not meet, and it lies in that of " + String.join(", ", within);
  }

  /** What the fires of the shop cannot do. */
  private List<String> fires(Course course) {
    Equipment has = course.billet.equipment();
    boolean other =
        has.forgeTaken() != Equipment.Forge.NONE || has.saltTaken() != Equipment.Salt.NONE;
    double highest = has.kilnTaken().there() ? has.kilnTaken().highestTaken().celsius() : 0;
    List<String> over =
        course.planned().stream()
            .filter(s -> s.hold().isPresent() && s.hottestC() > highest + 0.5)
            .filter(s -> s.in() != Heater.OVEN)
            .map(ScheduleStep::name)
            .toList();
    List<String> all = new ArrayList<>();
    if (!has.kilnTaken().there() && other) {
      all.add(
          "Without a kiln the holds are only as good as the fire is even; long anneals in a forge are"
              + " a hope.");
    } else if (!over.isEmpty()) {
      String where = has.forgeTaken() == Equipment.Forge.NONE ? "the salt" : "the forge";
      all.add(
          (has.kilnTaken().there()
                  ? "The kiln goes to " + show(highest)
                  : "There is neither kiln nor forge")
              + ": "
              + String.join(", ", over)
              + (other
                  ? (over.size() > 1 ? " are for " : " is for ") + where + "."
                  : " cannot be done in this shop and must be done elsewhere."));
    }
    return all;
  }

  /** What the soak and what the cycles do for the deepest line, so that nobody soaks twice. */
  private List<String> contributions(Workpiece start, Course course) {
    double before = deepest(LineReport.of(start, visibility));
    if (before <= 0) {
      return List.of();
    }
    List<After> after = course.after();
    Optional<After> soaked = after.stream().filter(a -> a.step().equals("soak")).findFirst();
    double middle = soaked.map(After::deepestMissingPct).orElse(before);
    double end =
        after.stream()
            .filter(a -> a.step().startsWith("refine") || a.step().equals("normalize"))
            .reduce((a, b) -> b)
            .map(After::deepestMissingPct)
            .orElse(middle);
    double whole = before - end;
    if (!(whole > LEAST_CLEARED_PCT)) {
      return List.of(
          String.format(
              Locale.ROOT,
              "The deepest line misses %.2f %% carbon, and neither a soak nor the cycles of this"
                  + " schedule change that.",
              before));
    }
    double soakShare = 100 * (before - middle) / whole;
    String cycles =
        100 - soakShare < 10 && soaked.isPresent()
            ? "normalizing and the cycles, cooler and shorter, hardly move it"
            : String.format(Locale.ROOT, "normalizing and the cycles take it to %.2f %%", end);
    return List.of(
        String.format(
            Locale.ROOT,
            "The deepest line misses %.2f %% carbon before; %s%s. Of what is cleared, the soak clears"
                + " %.0f %% and they %.0f %%.",
            before,
            soaked.isPresent()
                ? String.format(Locale.ROOT, "the soak takes it to %.2f %%, and ", middle)
                : "without a soak ",
            cycles,
            soakShare,
            100 - soakShare));
  }

  /** The most carbon missing at any seam, wt%. */
  static double deepest(List<LineReport> lines) {
    return lines.stream().mapToDouble(LineReport::missingPct).max().orElse(0);
  }

  private String show(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }
}
