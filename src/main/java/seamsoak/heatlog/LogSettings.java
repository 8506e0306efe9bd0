package seamsoak.heatlog;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;
import seamsoak.source.SourceTable;
import seamsoak.source.Standing;

/**
 * What makes a log uncertain, as {@code thermocouples.csv} and {@code heat-log.csv} have it.
 *
 * @param wires types and classes of thermocouples
 * @param settings the other numbers, by name
 */
public record LogSettings(List<Thermocouple> wires, Map<String, Setting> settings) {
  public LogSettings {
    wires = List.copyOf(wires);
  }

  /** One number. */
  public record Setting(String name, double value, String unit, String source, Standing standing) {}

  /** Reads both tables. */
  public static LogSettings load(DataFolder data) {
    Map<String, Setting> settings = new LinkedHashMap<>();
    for (CsvTable.Row row : data.csv("heat-log.csv").someRows()) {
      Setting s =
          new Setting(
              row.text("name"),
              positive(row, "value"),
              row.text("unit"),
              row.text("source"),
              SourceTable.standing(row));
      if (settings.put(s.name(), s) != null) {
        throw new Fault(row.place("name"), "'" + s.name() + "' stands twice", "names are unique");
      }
    }
    List<Thermocouple> wires = new ArrayList<>();
    for (CsvTable.Row row : data.csv("thermocouples.csv").someRows()) {
      wires.add(wire(row, settings));
    }
    for (String name : List.of("logger", "junction", "surface", "heating")) {
      if (!settings.containsKey(name)) {
        throw new Fault(
            data.csv("heat-log.csv").someRows().get(0).place(),
            "there is no line '" + name + "'",
            "leave none of them out");
      }
    }
    return new LogSettings(wires, settings);
  }

  private static Thermocouple wire(CsvTable.Row row, Map<String, Setting> settings) {
    String type = row.text("type");
    for (String name : List.of("range-" + type, "drift-" + type)) {
      if (!settings.containsKey(name)) {
        throw new Fault(
            row.place("type"),
            "heat-log.csv has no line '" + Fault.shown(name) + "'",
            "add it there");
      }
    }
    return new Thermocouple(
        type,
        row.text("class"),
        positive(row, "least_K"),
        row.number("percent").orElse(0),
        row.number("beyond_C"),
        row.number("beyond_K_per_K").orElse(0),
        row.required("to_C"),
        settings.get("range-" + type).value(),
        settings.get("drift-" + type).value(),
        row.text("source"),
        SourceTable.standing(row));
  }

  private static double positive(CsvTable.Row row, String column) {
    double value = row.required(column);
    if (value <= 0) {
      throw new Fault(row.place(column), "'" + row.text(column) + "' is not above 0", "it must be");
    }
    return value;
  }

  public double value(String name) {
    return settings.get(name).value();
  }

  /**
   * A thermocouple by type, class and whether it is new, such as {@code K standard, used}. Where
   * the class is left out the widest of its type is taken, where its past is, it was used.
   */
  public Optional<Couple> find(String text) {
    String[] parts = text.strip().toLowerCase(Locale.ROOT).split("\\s*,\\s*", -1);
    String[] words = parts[0].replaceFirst("^type\\s+", "").split("\\s+", 2);
    String past = parts.length == 2 ? parts[1] : "used";
    if (parts.length > 2 || !past.equals("used") && !past.equals("new")) {
      return Optional.empty();
    }
    return wires.stream()
        .filter(w -> w.type().equalsIgnoreCase(words[0]))
        .filter(w -> words.length == 1 || w.grade().equalsIgnoreCase(words[1]))
        .reduce((a, b) -> b.leastKelvin() > a.leastKelvin() ? b : a)
        .map(w -> new Couple(w, past.equals("used")));
  }

  /** The types, each once, for a message. */
  public List<String> types() {
    return wires.stream().map(Thermocouple::type).distinct().sorted().toList();
  }

  /** The classes of a type. */
  public List<String> grades(String type) {
    return wires.stream()
        .filter(w -> w.type().equalsIgnoreCase(type))
        .map(Thermocouple::grade)
        .toList();
  }
}
