package seamsoak.schedule;

/** Where the temperatures and times of a schedule lie, as an answer may be asked to tell. */
public final class Margins {
  /** Above the highest upper critical temperature when normalizing, K (common glossary: 38). */
  public static final double NORMALIZE_ABOVE = 40;

  /** Least above it, where published ranges are cooler, K; judgement. */
  public static final double NORMALIZE_LEAST_ABOVE = 15;

  /** A cycle that does not go this far above Ac1 makes no new grains to speak of, K; judgement. */
  public static final double CYCLE_ABOVE_AC1 = 40;

  /** An anneal above Ac1 is at least so far above it, and below Accm, K. */
  public static final double ANNEAL_FROM_CRITICAL = 15;

  /**
   * And so far below the last heat that made grains, so that they stay as they are, K; judgement.
   */
  public static final double ANNEAL_BELOW_LAST = 10;

  /** A change of grain by less than this many numbers is not worth a cycle; judgement. */
  public static final double WORTH_A_CYCLE = 0.5;

  /** Fine enough for a blade: finer shows in no fracture and costs hardening depth; judgement. */
  public static final double FINE_ENOUGH = 10;

  /** Cycles of refining at most. */
  public static final int MOST_CYCLES = 5;

  /** A hold counts from when the core is this near, K. */
  public static final double CLOSE_KELVIN = 15;

  /** Walls and gas of a forge above the work it is held at, K; judgement. */
  public static final double FORGE_ABOVE = 50;

  /** A closed kiln that is switched off falls about this fast at red heat, C/h; judgement. */
  public static final double KILN_FALLS = 120;

  private Margins() {}
}
