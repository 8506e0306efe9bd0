package seamsoak.heatlog;

/** What stands before the decimals of a number; the other one may part thousands. */
public enum DecimalMark {
  DOT('.', ','),
  COMMA(',', '.');

  private final char mark;
  private final char group;

  DecimalMark(char mark, char group) {
    this.mark = mark;
    this.group = group;
  }

  char mark() {
    return mark;
  }

  char group() {
    return group;
  }
}
