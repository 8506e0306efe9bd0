package seamsoak.schedule;

import java.util.HashSet;
import java.util.Set;
import seamsoak.carbon.Edge;
import seamsoak.safety.Condition;

/**
 * Where a step is done and what it meets there.
 *
 * @param in what it is heated in
 * @param outside edge of the outer faces
 * @param more conditions for cautions beside those of the shop
 */
record Fire(Heater in, Edge outside, Set<Condition> more) {
  /** Without heat. */
  static final Fire NONE = new Fire(Heater.BENCH, Edge.SEALED, Set.of());

  Fire {
    more = Set.copyOf(more);
    outside = outside.inStillAir(in == Heater.KILN);
  }

  /**
   * What holds at it.
   *
   * @param forge what the forge brings along
   * @param on what the piece is wrapped in brings along
   */
  Set<Condition> conditions(Set<Condition> forge, Set<Condition> on) {
    Set<Condition> all = new HashSet<>(more);
    all.addAll(on);
    switch (in) {
      case KILN -> all.add(Condition.KILN);
      case FORGE -> all.addAll(forge);
      case SALT -> all.add(Condition.SALT);
      case OVEN, BENCH -> {}
    }
    return all;
  }
}
