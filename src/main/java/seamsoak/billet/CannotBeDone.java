package seamsoak.billet;

/** That work cannot be done with the metal there is. */
public final class CannotBeDone extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final String instead;

  /**
   * @param why no sentence of its own
   * @param instead what would do
   */
  CannotBeDone(String why, String instead) {
    super(why);
    this.instead = instead;
  }

  String instead() {
    return instead;
  }
}
