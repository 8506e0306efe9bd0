package seamsoak.kiln;

import java.util.List;
import seamsoak.schedule.StepKind;

/**
 * Why a billet is not in a load.
 *
 * @param wishes of each billet
 * @param all of them that the kiln can fulfil
 */
record StaysOut(List<Wishes> wishes, List<Wish> all) {

  /** Whether a billet is hard, and what is left is to temper it. */
  boolean isHard(int billet) {
    List<StepKind> left = wishes.get(billet).left();
    return left.contains(StepKind.TEMPER) && !left.contains(StepKind.HARDEN);
  }

  /**
   * @param group that is in it
   */
  Load.Why why(int billet, StepKind kind, int fromEnd, double celsius, List<Wish> group) {
    return isHard(billet) == isHard(group.get(0).billet())
        ? amongAlike(billet, kind, fromEnd, celsius)
        : !isHard(billet)
            ? Load.Why.NOT_ASKED
            : kind == StepKind.TEMPER
                ? Load.Why.TEMPERED_FIRST
                : undoesQuench(billet, celsius) ? Load.Why.UNDOES_QUENCH : Load.Why.NOT_ASKED;
  }

  private Load.Why amongAlike(int billet, StepKind kind, int fromEnd, double celsius) {
    if (all.stream()
        .anyMatch(w -> w.billet() == billet && w.kind() == kind && w.fromEnd() == fromEnd)) {
      return Load.Why.OWN_LOAD;
    }
    Wishes own = wishes.get(billet);
    if (own.elsewhere().contains(kind)) {
      return Load.Why.ELSEWHERE;
    }
    if (kind.compareTo(StepKind.PRE_HEAT) >= 0 && own.bySheet().isPresent()) {
      return Load.Why.BY_SHEET;
    }
    List<StepKind> left = own.left();
    boolean toHarden = left.contains(StepKind.HARDEN) && kind.compareTo(StepKind.HARDEN) <= 0;
    if (left.contains(StepKind.TEMPER) && !toHarden && undoesQuench(billet, celsius)) {
      return Load.Why.UNDOES_QUENCH;
    }
    boolean cyclesToCome =
        left.stream()
            .filter(s -> s == StepKind.NORMALIZE || s == StepKind.REFINE)
            .anyMatch(s -> s.compareTo(kind) >= 0);
    return celsius > own.windows().lowestAc1() && !cyclesToCome
        ? Load.Why.UNDOES_STRUCTURE
        : Load.Why.NOT_ASKED;
  }

  private boolean undoesQuench(int billet, double celsius) {
    return celsius
        > all.stream()
            .filter(w -> w.billet() == billet && w.kind() == StepKind.TEMPER)
            .mapToDouble(Wish::highC)
            .min()
            .orElse(0);
  }
}
