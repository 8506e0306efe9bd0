package seamsoak.schedule;

/** Where the temperatures and times of a schedule lie, as an answer may be asked to tell. */
public final class Margins {
  /** Above the highest upper critical temperature when normalizing, K (common glossary: 38). */
  public static final double NORMALIZE_ABOVE = 40;

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
