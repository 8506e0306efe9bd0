package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import seamsoak.heat.Section;

/**
 * How carefully a section has to be cooled from above the critical range.
 *
 * @param way what to do
 * @param reasons one sentence for each steel that asks for care
 */
record Guard(Way way, List<String> reasons) {
  /** Ways to cool. */
  enum Way {
    /** Still air. */
    AIR,
    /** Still air, but annealed before anything cuts it or it lies overnight. */
    AIR_THEN_ANNEAL,
    /** In the kiln, held until all has changed. */
    KILN,
    /** Never heated for normalizing; annealed only. */
    ANNEAL_ONLY
  }

  /** For steels cooled from a heat with grains of that number. */
  static Guard of(List<SteelNow> steels, Section section, double celsius, double grainNumber) {
    Way way = Way.AIR;
    List<String> reasons = new ArrayList<>();
    for (SteelNow s : steels) {
      SteelNow.InAir air = s.inAir(section, celsius, grainNumber);
      Way own = Way.AIR;
      if (s.neverNormalized()) {
        own = Way.ANNEAL_ONLY;
        reasons.add("the sheets of " + s.id() + " say to anneal only, never to normalize");
      } else if (s.normalizingDisputed()) {
        own = Way.KILN;
        reasons.add("sheets of " + s.id() + " disagree on whether it may be normalized");
      }
      if (air == SteelNow.InAir.YES) {
        own = own == Way.ANNEAL_ONLY ? own : Way.KILN;
        reasons.add(s.id() + " hardens in still air in this section");
      } else if (air == SteelNow.InAir.PERHAPS) {
        own = own == Way.AIR ? Way.AIR_THEN_ANNEAL : own;
        reasons.add(s.id() + " may harden in part in still air in this section");
      }
      way = own.compareTo(way) > 0 ? own : way;
    }
    return new Guard(way, List.copyOf(reasons));
  }

  boolean slow() {
    return way == Way.KILN || way == Way.ANNEAL_ONLY;
  }

  /** The reasons as one sentence's part. */
  String because() {
    return reasons.stream().distinct().collect(Collectors.joining("; "));
  }
}
