package seamsoak.unit;

/** A text that is no quantity: what was found, and what may be written instead. */
public final class Refused extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String found;
  private final String expected;
  private final boolean bare;

  Refused(String found, String expected, boolean bare) {
    super(found + "; " + expected);
    this.found = found;
    this.expected = expected;
    this.bare = bare;
  }

  public String found() {
    return found;
  }

  public String expected() {
    return expected;
  }

  /** Whether it is a number that only wants its unit. */
  public boolean bare() {
    return bare;
  }
}
