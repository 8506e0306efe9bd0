package seamsoak.page.fire;

/** Something else is recorded already where an entry goes, or the plan is another by now. */
public final class Twice extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final boolean mayReplace;

  Twice(String sentence, boolean mayReplace) {
    super(sentence);
    this.mayReplace = mayReplace;
  }

  /** Whether it can be written over what is there. */
  public boolean mayReplace() {
    return mayReplace;
  }
}
