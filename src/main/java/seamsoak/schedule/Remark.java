package seamsoak.schedule;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Step;
import seamsoak.steel.TemperatureRange;

/** What to know of a schedule as a whole. */
public sealed interface Remark {
  /** What needs no number. */
  enum Always implements Remark {
    /** By its finer structure, so that a line comes back. */
    NORMALIZING_HIDES_LINES,
    /** For want of a kiln, with another fire at hand. */
    HOLDS_WITHOUT_KILN,
    COLOR_TELLS_LITTLE;
  }

  /** Neither soak nor cycles change the deepest line. */
  record LineStays(double missingPct) implements Remark {}

  /**
   * What becomes of the deepest line, wt% missing.
   *
   * @param beforePct before the schedule
   * @param soakedPct after the soak, if there is one
   * @param endPct after the cycles
   */
  record LineClears(double beforePct, Optional<Double> soakedPct, double endPct) implements Remark {
    /** What the soak does of all that is cleared, percent; cycles may undo a trace of it. */
    public double soakSharePct() {
      return Math.min(100, 100 * (beforePct - soakedPct.orElse(beforePct)) / (beforePct - endPct));
    }
  }

  /**
   * An anneal takes the carbon of one steel into another, whose carbide holds it better.
   *
   * @param step which anneal
   * @param from the steel that loses
   * @param beforePct its carbon before, wt%
   * @param afterPct its carbon after
   * @param into the steel that gains most
   * @param intoPct its carbon after
   * @param quenchedPct of the loser, when it is quenched; empty where nothing is
   */
  record CarbonGathers(
      StepName step,
      String from,
      double beforePct,
      double afterPct,
      String into,
      double intoPct,
      Optional<Double> quenchedPct)
      implements Remark {
    /** Whether the hold before the quench takes it back. */
    public boolean comesBack() {
      return quenchedPct.filter(p -> p > beforePct - MUCH_PCT).isPresent();
    }

    /** Less than that changes no hardness to speak of, wt%; judgement. */
    static final double MUCH_PCT = 0.15;
  }

  /** Why a step leaves the range that a sheet prints for a steel. */
  enum Outside {
    /** The steel does not harden. */
    OTHERS_DECIDE,
    /** The steel would harden by its own sheet, and stays soft at this heat. */
    HEAT_OF_OTHERS,
    /** No kiln can tell the difference. */
    NEAR_ENOUGH,
    /** The range is of a slow anneal, and this one stays below where any steel changes. */
    BELOW_FIRST_CHANGE,
    /** In the range another steel changes, and nothing must. */
    ANOTHER_CHANGES,
    /** In the range all carbide would dissolve, or none. */
    CARBIDE_TO_GATHER,
    HARDNESS_WANTED,
    /** Its carbon has moved since it was bought. */
    CARBON_MOVED,
    /** The ranges do not meet, and it lies in those of others. */
    WITHIN_OTHERS
  }

  /**
   * A step outside what the sheet of a steel prints.
   *
   * @param step its name
   * @param celsius its heat
   * @param steel whose sheet
   * @param range that it prints
   * @param why it is left
   * @param within steels in whose range it lies, where that is why
   */
  record OutsideRange(
      StepName step,
      double celsius,
      String steel,
      TemperatureRange range,
      Outside why,
      List<String> within)
      implements Remark {}

  /**
   * Steps that are too hot for the kiln.
   *
   * @param highestC that it reaches; empty without one
   * @param steps their names
   * @param fire for them, if there is one
   */
  record BeyondKiln(Optional<Double> highestC, List<StepName> steps, Optional<Heater> fire)
      implements Remark {}

  /**
   * The file has treatments of its own of which it does not say that they were done, so that this
   * schedule holds them all once more.
   *
   * @param steps of the file
   */
  record PlannedAnew(List<Step> steps) implements Remark {}

  /**
   * A steel that was bought soft stays so beside what cuts, as it is meant to.
   *
   * @param edge the steel that cuts
   * @param carbonPct of the soft one by then, wt%; empty where no carbon hardens it
   */
  record SoftCladding(String steel, String edge, Optional<Double> carbonPct) implements Remark {}

  /** The temperatures rest on the carbon that each of several steels has by then. */
  record CarbonByThen(List<String> steels) implements Remark {}
}
