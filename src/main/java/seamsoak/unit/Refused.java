package seamsoak.unit;

/** A text that is no quantity: what was found, and what may be written instead. */
public final class Refused extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String found;
  private final String expected;

  Refused(String found, String expected) {
    super(found + "; " + expected);
    this.found = found;
    this.expected = expected;
  }

  public String found() {
    return found;
  }

  public String expected() {
    return expected;
  }
}
