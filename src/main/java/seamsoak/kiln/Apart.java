package seamsoak.kiln;

import java.util.List;
import seamsoak.schedule.StepKind;

/** Why steps of one kind do not share a load. */
public sealed interface Apart {
  StepKind kind();

  /** No heat does for both. */
  record Windows(StepKind kind, Load.Window cooler, Load.Window hotter) implements Apart {}

  /** What falls with the kiln ends elsewhere, or one does and the kiln has to wait for it. */
  record Falls(StepKind kind, List<Integer> billets, double firstC, double otherC)
      implements Apart {}

  /**
   * A billet hardens by its own sheet alone, since no formula reaches its steel.
   *
   * @param own range of that sheet
   * @param meets the others that could be hardened from it as well
   * @param parted those that could not
   */
  record BySheet(StepKind kind, Load.Window own, List<Load.Window> meets, List<Load.Window> parted)
      implements Apart {}

  /** The kiln does not reach the heat of a billet. */
  record KilnTooCool(StepKind kind, int billet, double lowC, double kilnC) implements Apart {}
}
