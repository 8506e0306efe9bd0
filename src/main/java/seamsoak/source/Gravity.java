package seamsoak.source;

/** What comes of it when a caution is not heeded, worst first. */
public enum Gravity {
  /** Can kill at once. */
  KILLS,
  /** Injures, or makes ill in the long run. */
  INJURES,
  /** Spoils the work, the tools or the surroundings. */
  SPOILS;

  /** Its number in tables and answers, 1 for the worst. */
  public int number() {
    return ordinal() + 1;
  }
}
