package seamsoak.schedule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import seamsoak.schedule.demand.Guard;
import seamsoak.schedule.demand.HardeningHeat;
import seamsoak.schedule.demand.SteelNow;

/**
 * How a piece is normalized and refined.
 *
 * @param normalizeC where it would be normalized
 * @param guard how it has to be cooled from there
 * @param cycles how its cycles run; empty where it has none
 */
record Refining(double normalizeC, Guard guard, Optional<Cycling> cycles) {
  /**
   * Cycles.
   *
   * @param guard how they are cooled
   * @param normalized whether normalizing comes before them
   * @param fromC that they come down from
   * @param toC heat of the last
   * @param below the steel that they must not change, and so stay below, if there is one
   */
  record Cycling(
      Guard guard, boolean normalized, double fromC, double toC, Optional<String> below) {}

  static Refining of(Course course, Optional<HardeningHeat> harden, Treated treated) {
    List<SteelNow> steels = course.steels();
    double normalize = Cycles.normalizeCelsius(steels, harden);
    Guard guard = guard(course, normalize);
    // The last is near the hardening heat, or a little cooler than the first where nothing hardens.
    double last = harden.map(h -> Math.min(normalize, h.celsius())).orElse(normalize - 20);
    return new Refining(
        normalize,
        guard,
        treated.refined()
            ? Optional.empty()
            : guard.way() == Guard.Way.ANNEAL_ONLY
                ? harden.flatMap(h -> below(course, h, last))
                : Optional.of(
                    new Cycling(
                        guard,
                        !guard.slow() && !treated.normalized(),
                        normalize,
                        last,
                        Optional.empty())));
  }

  /**
   * Cycles of the steels to be hardened, so cool that what must not be normalized stays as it is.
   */
  private static Optional<Cycling> below(Course course, HardeningHeat harden, double last) {
    SteelNow kept =
        course.steels().stream()
            .filter(SteelNow::neverNormalized)
            .min(Comparator.comparingDouble(SteelNow::unchangedToC))
            .orElseThrow();
    double celsius = 5 * Math.floor(Math.min(last, kept.unchangedToC()) / 5);
    boolean enough =
        harden.windows().stream()
            .allMatch(w -> celsius >= w.steel().highestAc1C() + Margins.CYCLE_ABOVE_AC1);
    Guard guard = guard(course, celsius);
    return enough && guard.way() != Guard.Way.ANNEAL_ONLY
        ? Optional.of(new Cycling(guard, false, celsius, celsius, Optional.of(kept.id())))
        : Optional.empty();
  }

  /**
   * The hardening heat, where cycles had to stay below a steel that must not change: no hotter than
   * the last of them, or it would coarsen what they refined and begin to change that steel.
   */
  HardeningHeat hardenedNear(HardeningHeat wanted) {
    return cycles
        .filter(c -> c.below().isPresent())
        .map(c -> wanted.noHotterThan(c.toC()))
        .orElse(wanted);
  }

  private static Guard guard(Course course, double celsius) {
    return Guard.of(course.steels(), course.heats().section(), celsius, course.grainNumber());
  }
}
