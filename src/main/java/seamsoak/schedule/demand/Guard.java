package seamsoak.schedule.demand;

import java.util.ArrayList;
import java.util.List;
import seamsoak.heat.Section;

/**
 * How carefully a section has to be cooled from above the critical range.
 *
 * @param way what to do
 * @param reasons why, for each steel that asks for care
 */
public record Guard(Way way, List<Reason> reasons) {
  /** Ways to cool. */
  public enum Way {
    /** Still air. */
    AIR,
    /** Still air, but annealed before anything cuts it or it lies overnight. */
    AIR_THEN_ANNEAL,
    /** In the kiln, held until all has changed. */
    KILN,
    /** Never heated for normalizing; annealed only. */
    ANNEAL_ONLY
  }

  /** Why a steel asks for care. */
  public enum Because {
    /** Its sheets say to anneal only. */
    NEVER_NORMALIZED,
    /** Its sheets disagree on whether it may be normalized. */
    NORMALIZING_DISPUTED,
    HARDENS_IN_AIR,
    /** In part. */
    MAY_HARDEN_IN_AIR
  }

  /** A steel, and why it asks for care. */
  public record Reason(String steel, Because because) {}

  /**
   * For steels cooled from a heat with grains of that number. What a steel does not change at asks
   * for no care of it.
   */
  public static Guard of(
      List<SteelNow> steels, Section section, double celsius, double grainNumber) {
    Way way = Way.AIR;
    List<Reason> reasons = new ArrayList<>();
    for (SteelNow s : steels) {
      if (celsius <= s.unchangedToC()) {
        continue;
      }
      Hardens air = s.inAir(section, celsius, grainNumber);
      Way own = Way.AIR;
      if (s.neverNormalized()) {
        own = Way.ANNEAL_ONLY;
        reasons.add(new Reason(s.id(), Because.NEVER_NORMALIZED));
      } else if (s.normalizingDisputed()) {
        own = Way.KILN;
        reasons.add(new Reason(s.id(), Because.NORMALIZING_DISPUTED));
      }
      if (air == Hardens.YES) {
        own = own == Way.ANNEAL_ONLY ? own : Way.KILN;
        reasons.add(new Reason(s.id(), Because.HARDENS_IN_AIR));
      } else if (air == Hardens.PERHAPS) {
        own = own == Way.AIR ? Way.AIR_THEN_ANNEAL : own;
        reasons.add(new Reason(s.id(), Because.MAY_HARDEN_IN_AIR));
      }
      way = own.compareTo(way) > 0 ? own : way;
    }
    return new Guard(way, reasons.stream().distinct().toList());
  }

  public boolean slow() {
    return way == Way.KILN || way == Way.ANNEAL_ONLY;
  }
}
