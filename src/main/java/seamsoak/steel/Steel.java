package seamsoak.steel;

import java.util.List;

/**
 * A steel as the program uses it: an analysis with the published ranges of its grade where it has
 * one.
 *
 * @param id key of the table, or the analysis as written
 * @param designation its standard designation
 * @param aliases other names it is found under
 * @param category such as {@code plain carbon}
 * @param analysis typical analysis of the grade, or the one written out
 */
public record Steel(
    String id, String designation, List<String> aliases, String category, Composition analysis) {
  public Steel {
    aliases = List.copyOf(aliases);
  }
}
