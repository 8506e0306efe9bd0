package seamsoak.source;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;

/** The sources by key, in the order of their table. */
public final class SourceTable {
  private final Map<String, Source> sources;

  private SourceTable(Map<String, Source> sources) {
    this.sources = Collections.unmodifiableMap(sources);
  }

  /** Reads {@code sources.csv}. */
  public static SourceTable load(DataFolder data) {
    Map<String, Source> sources = new LinkedHashMap<>();
    for (CsvTable.Row row : data.csv("sources.csv").rows()) {
      Source source =
          new Source(filled(row, "key"), filled(row, "citation"), standing(row), row.text("note"));
      if (sources.put(source.key(), source) != null) {
        throw new Fault(
            row.place("key"), "source '" + source.key() + "' stands twice", "give each key once");
      }
    }
    return new SourceTable(sources);
  }

  public Collection<Source> sources() {
    return sources.values();
  }

  public Optional<Source> find(String key) {
    return Optional.ofNullable(sources.get(key));
  }

  /** The standing named in a row's column {@code standing}; {@link Fault} for unknown words. */
  public static Standing standing(CsvTable.Row row) {
    try {
      return Standing.of(row.text("standing"));
    } catch (IllegalArgumentException e) {
      throw new Fault(
          row.place("standing"), e.getMessage(), "the words are " + Standing.allWords());
    }
  }

  private static String filled(CsvTable.Row row, String column) {
    String text = row.text(column);
    if (text.isEmpty()) {
      throw new Fault(row.place(column), "the " + column + " is blank", "each source has one");
    }
    return text;
  }
}
