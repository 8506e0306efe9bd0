package seamsoak.data;

/**
 * Where something stands in what the user gave us.
 *
 * @param file file name as the user wrote it, or a name such as {@code command line}
 * @param line counted from 1, 0 when the whole file is meant
 * @param column counted from 1, 0 when the whole line is meant
 */
public record Place(String file, int line, int column) {
  public static Place of(String file) {
    return new Place(file, 0, 0);
  }

  @Override
  public String toString() {
    return line == 0 ? file : column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
  }
}
