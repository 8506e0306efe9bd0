package seamsoak.property.hardening;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.data.Nearest;
import seamsoak.source.SourceTable;

/**
 * The quenchants, as {@code quenchants.csv} has them, slowest first.
 *
 * @param quenchants each by its id
 */
public record QuenchantTable(Map<String, Quenchant> quenchants) {
  /** Reads {@code quenchants.csv}. */
  public static QuenchantTable load(DataFolder data) {
    Map<String, Quenchant> all = new LinkedHashMap<>();
    for (CsvTable.Row row : data.csv("quenchants.csv").rows()) {
      Quenchant q = read(row);
      if (all.put(q.id(), q) != null) {
        throw new Fault(row.place("id"), "'" + q.id() + "' stands twice", "ids are unique");
      }
    }
    return new QuenchantTable(all);
  }

  /** All of them. */
  public List<Quenchant> all() {
    return List.copyOf(quenchants.values());
  }

  /** The one of that id. */
  public Optional<Quenchant> find(String id) {
    return Optional.ofNullable(quenchants.get(plain(id)));
  }

  /** What to write in place of an id that there is not. */
  public String instead(String id) {
    return Nearest.to(plain(id), quenchants.keySet())
        .map(near -> "did you mean '" + near + "'?")
        .orElse("they are " + String.join(", ", quenchants.keySet()));
  }

  private static String plain(String id) {
    return id.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
  }

  private static Quenchant read(CsvTable.Row row) {
    double low = row.required("severity_low_per_in");
    double typical = row.required("severity_per_in");
    double high = row.required("severity_high_per_in");
    if (!(low > 0 && low <= typical && typical <= high)) {
      throw new Fault(
          row.place("severity_per_in"), "severities out of order", "0 < low <= typical <= high");
    }
    return new Quenchant(
        row.text("id"),
        row.text("name"),
        kind(row),
        row.text("speed"),
        low,
        typical,
        high,
        row.number("use_low_C"),
        row.number("use_high_C"),
        row.number("flash_C"),
        row.text("source"),
        SourceTable.standing(row),
        row.text("note"));
  }

  private static Quenchant.Kind kind(CsvTable.Row row) {
    return Arrays.stream(Quenchant.Kind.values())
        .filter(k -> k.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(row.text("kind")))
        .findFirst()
        .orElseThrow(
            () ->
                new Fault(
                    row.place("kind"),
                    "unknown kind '" + row.text("kind") + "'",
                    "the kinds are air, plates, insulation, oil, vegetable-oil, salt and water"));
  }
}
