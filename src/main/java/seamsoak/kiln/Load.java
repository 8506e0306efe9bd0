package seamsoak.kiln;

import java.util.List;
import java.util.Optional;
import seamsoak.schedule.StepKind;

/**
 * What is in the kiln at one time.
 *
 * @param kind of step that it is
 * @param fromEnd how many of that kind come after it
 * @param celsius the kiln is at
 * @param kilnMinutes it takes to get there from the load before, climbing or falling
 * @param pieces in it, in the order in which they are taken out
 * @param fall what those do that fall with the kiln
 * @param aloneMinutes that its steps would take one after the other, as each was planned
 * @param out the others, and why
 */
public record Load(
    StepKind kind,
    int fromEnd,
    double celsius,
    double kilnMinutes,
    List<Piece> pieces,
    Optional<Fall> fall,
    double aloneMinutes,
    List<Out> out) {
  public Load {
    pieces = List.copyOf(pieces);
    out = List.copyOf(out);
  }

  public boolean together() {
    return pieces.size() > 1;
  }

  /** Minutes from the first in until the last hold is over. */
  public double minutes() {
    return pieces.stream()
        .mapToDouble(p -> p.inMinutes() + p.riseMinutes() + p.heldMinutes())
        .max()
        .orElse(0);
  }

  /** Whether its steps would be over sooner one after the other, each at its own heat. */
  public boolean soonerAlone() {
    return together() && minutes() > aloneMinutes;
  }

  /**
   * A billet in it.
   *
   * @param billet which
   * @param step as its own schedule names it
   * @param window that would do, and what its schedule planned
   * @param inMinutes after the first it is put in
   * @param riseMinutes until its core is there
   * @param leastMinutes it is held at least, from then on
   * @param mostMinutes it may be held; empty where more does no harm
   * @param heldMinutes it is held
   * @param outMinutes after the first was put in it is taken out; empty for what stays in
   * @param then what comes after
   * @param becomes what differs from its own schedule
   */
  public record Piece(
      int billet,
      String step,
      Window window,
      double inMinutes,
      double riseMinutes,
      double leastMinutes,
      Optional<Double> mostMinutes,
      double heldMinutes,
      Optional<Double> outMinutes,
      Then then,
      Optional<String> bath,
      Becomes becomes) {}

  /** From where to where a heat would do for a billet, and what its own schedule has. */
  public record Window(int billet, double lowC, double highC, double plannedC) {}

  /** What becomes of a piece when its hold is over. */
  public enum Then {
    AIR,
    QUENCH,
    FALL,
    STAY
  }

  /**
   * What a piece comes to at the shared heat.
   *
   * @param coarser grain than by its own schedule, in numbers; empty where nothing grows
   * @param hrc of its edge, and by its own schedule; empty but for tempers
   */
  public record Becomes(Optional<Double> coarser, Optional<Hrc> hrc) {
    static final Becomes THE_SAME = new Becomes(Optional.empty(), Optional.empty());
  }

  /** Hardness of an edge. */
  public record Hrc(double here, double planned) {}

  /** The kiln falls to a heat, no faster than that, and stays there. */
  public record Fall(double toC, double perHourC, double stayMinutes) {}

  /** A billet that is not in it. */
  public record Out(int billet, Why why) {}

  /** Why a billet is not in a load. */
  public enum Why {
    /** It has the step in a load of its own. */
    OWN_LOAD,
    /** It is hard: that heat would draw its temper or undo its quench. */
    UNDOES_QUENCH,
    /** Its structure is made: that heat would undo it. */
    UNDOES_STRUCTURE,
    /** It has that done elsewhere: in salt, in a forge, in an oven. */
    ELSEWHERE,
    /** No formula reaches its steel: it is hardened and tempered by its own sheet. */
    BY_SHEET,
    /** It was hard from the beginning, and tempered before all else. */
    TEMPERED_FIRST,
    /** It has no such step then. */
    NOT_ASKED
  }
}
