package seamsoak.property.correlation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import seamsoak.data.CsvTable;
import seamsoak.source.SourceTable;
import seamsoak.source.Standing;

/**
 * Where the rows behind one correlation come from, taken together.
 *
 * @param source key of their source; where they have several, the keys with commas between
 * @param standing how well they are known; see {@link Standing#together}
 * @param terms which terms have which standing
 * @param notes what the table says of single terms
 */
public record Origin(
    String source, Standing standing, Map<Standing, List<String>> terms, List<String> notes) {

  /** Of rows that name their term in a column. */
  public static Origin of(List<CsvTable.Row> rows, String termColumn) {
    Set<String> sources = new LinkedHashSet<>();
    Map<Standing, List<String>> terms = new EnumMap<>(Standing.class);
    Map<String, List<String>> termsByNote = new LinkedHashMap<>();
    for (CsvTable.Row row : rows) {
      String term = row.text(termColumn);
      sources.add(row.text("source"));
      add(terms.computeIfAbsent(SourceTable.standing(row), s -> new ArrayList<>()), term);
      if (!row.text("note").isEmpty()) {
        add(termsByNote.computeIfAbsent(row.text("note"), n -> new ArrayList<>()), term);
      }
    }
    List<String> notes = new ArrayList<>();
    termsByNote.forEach((note, of) -> notes.add(String.join(", ", of) + ": " + note));
    return new Origin(
        String.join(Correlation.BETWEEN_SOURCES, sources),
        Standing.together(terms.keySet()),
        terms,
        notes);
  }

  private static void add(List<String> terms, String term) {
    if (!terms.contains(term)) {
      terms.add(term);
    }
  }
}
