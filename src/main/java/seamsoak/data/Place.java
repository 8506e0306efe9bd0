package seamsoak.data;

import seamsoak.unit.Printable;

/**
 * Where something stands in what the user gave us.
 *
 * @param file file name as the user wrote it, or a name such as {@code command line}
 * @param line counted from 1, 0 when the whole file is meant
 * @param column counted from 1, 0 when the whole line is meant
 */
public record Place(String file, int line, int column) {
  private static final int LONGEST = 800;

  public static Place of(String file) {
    return new Place(file, 0, 0);
  }

  /** For people, who count lines but not columns. */
  public String words() {
    return line == 0 ? shown() : shown() + ", line " + line;
  }

  /** Exactly. */
  @Override
  public String toString() {
    return line == 0
        ? shown()
        : column == 0 ? shown() + ":" + line : shown() + ":" + line + ":" + column;
  }

  private String shown() {
    return Printable.of(file, LONGEST);
  }
}
