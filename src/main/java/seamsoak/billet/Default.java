package seamsoak.billet;

import java.util.Optional;

/**
 * Something that was assumed because the file does not say it.
 *
 * @param part of the file where it would stand
 * @param step whose it is, where the part is the steps
 * @param what was assumed; its value stands in {@link Defaults}
 */
public record Default(Part part, Optional<Step> step, What what) {
  /** Parts of a billet file. */
  public enum Part {
    STACK,
    STEPS,
    SOAK,
    COVERED_FACES,
    BLADE,
    EQUIPMENT,
    QUENCHANTS
  }

  /** What can be assumed. */
  public enum What {
    NO_SKIN,
    FACES(true),
    OUTSIDE(true),
    RISE(true),
    COOL(true),
    SLOW_COOL(true),
    NO_TURN,
    NO_GRIND,
    KERF(true),
    ALL_SLICES,
    COATING_UNKNOWN,
    ONLY_JACKET,
    CAN_INSIDE_UNKNOWN,
    CAN_VENT_UNKNOWN,
    MOST_SOAK(true),
    SOAK_OUTSIDE(true),
    COVERED(true),
    BLADE_THICKNESS,
    BLADE_WIDTH,
    HARDNESS(true),
    EDGE,
    GAS_FORGE,
    KILN_HIGHEST(true),
    KILN_RAMP(true),
    NO_SALT,
    NO_COLD,
    CLOSED_SHOP,
    NO_ACID,
    FAST_OIL;

    private final boolean judged;

    What() {
      this(false);
    }

    What(boolean judged) {
      this.judged = judged;
    }

    /** Whether it rests on judgement. */
    public boolean judged() {
      return judged;
    }
  }
}
