package seamsoak.state;

/**
 * What an etch shows of a line in each state that it can be etched in.
 *
 * @param asCooled as the billet is now: what a test etch would show
 * @param annealed after the anneal to come, and the heats before it
 * @param hardened hardened and tempered: the finished blade; of steel that is not hardened, as
 *     annealed
 */
public record Shows(Verdict asCooled, Verdict annealed, Verdict hardened) {
  /** Whether it shows in the blade in the likely case. */
  public boolean inBlade() {
    return hardened.contrast() >= 1;
  }

  /** Whether a line may show in the blade or in a test etch now. */
  public boolean matters() {
    return asCooled.verdict() != Verdict.Sure.CLEAR || hardened.verdict() != Verdict.Sure.CLEAR;
  }
}
