package seamsoak.schedule;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Bath;
import seamsoak.billet.Heat;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.unit.Temperature;

/**
 * What of the treatment was done already, since the metal was last forged.
 *
 * @param last step of each kind that the file says is done
 * @param tempers how often it was tempered
 */
record Treated(Map<Step.Kind, Step> last, int tempers) {
  /** Nothing: all of it is to do. */
  static final Treated NOTHING = new Treated(Map.of(), 0);

  Treated {
    last = Map.copyOf(last);
  }

  /**
   * As far as a file says it. A treatment that is under way counts: what is left of it stands in
   * the file. A file that says of nothing that it was done plans all of it.
   */
  static Treated of(List<Step> steps) {
    return Now.of(steps)
        .map(n -> steps.subList(0, n.step().mark().number()))
        .map(Treated::since)
        .orElse(NOTHING);
  }

  private static Treated since(List<Step> done) {
    Map<Step.Kind, Step> last = new EnumMap<>(Step.Kind.class);
    int tempers = 0;
    for (Step step : done) {
      switch (step.kind()) {
        case WELD, DRAW, PRESS, ROLL, RESTACK, TILE, TWIST, SOAK -> last.clear();
        case ANNEAL, NORMALIZE, REFINE, RELIEVE -> last.put(step.kind(), step);
        case HARDEN -> {
          last.put(step.kind(), step);
          tempers = 0;
        }
        case TEMPER -> tempers += step.times();
        case GRIND -> {
          // before the anneal it is the forging's faces that are cleaned
          if (last.containsKey(Step.Kind.ANNEAL)) {
            last.put(step.kind(), step);
          }
        }
        case UNJACKET, COOL -> {
          // leaves the structure as it is
        }
      }
    }
    return new Treated(last, tempers);
  }

  /** The treatments that a file has and of which it does not say whether they were done. */
  static List<Step> untold(List<Step> steps) {
    return Now.of(steps).isPresent()
        ? List.of()
        : steps.stream().filter(s -> s.kind().treats()).toList();
  }

  /** Whether the grain needs no normalizing any more. */
  boolean normalized() {
    return last.containsKey(Step.Kind.NORMALIZE) || refined();
  }

  /** Whether the cycles are done. */
  boolean refined() {
    return last.containsKey(Step.Kind.REFINE) || annealed();
  }

  /** Whether it was made soft for the bench. */
  boolean annealed() {
    return last.containsKey(Step.Kind.ANNEAL) || hardened();
  }

  /** Whether it was ground to the blade. */
  boolean ground() {
    return last.containsKey(Step.Kind.GRIND);
  }

  /** Whether the strain of that was taken out. */
  boolean relieved() {
    return last.containsKey(Step.Kind.RELIEVE);
  }

  /** Whether it was hardened, so that only tempering is left. */
  boolean hardened() {
    return last.containsKey(Step.Kind.HARDEN);
  }

  /** What it was hardened in. */
  Optional<Bath> bath() {
    return Optional.ofNullable(last.get(Step.Kind.HARDEN)).map(s -> ((Step.Harden) s).in());
  }

  /** The heat of the last cycle, C. */
  Optional<Double> lastCycleC() {
    return Optional.ofNullable(last.get(Step.Kind.REFINE)).stream()
        .flatMap(s -> s.heats().stream())
        .map(Heat::hottest)
        .map(Temperature::celsius)
        .reduce((first, next) -> next);
  }
}
