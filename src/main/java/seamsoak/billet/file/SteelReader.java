package seamsoak.billet.file;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.steel.Steel;

/**
 * Looks up the steels that a billet names; one that it names twice goes by the first name.
 *
 * @param find the steel of an id, an alias or a written analysis
 * @param nearest the known name nearest to a misspelt one
 * @param before those named so far
 */
record SteelReader(
    Function<String, Optional<Steel>> find,
    Function<String, Optional<String>> nearest,
    List<Steel> before) {
  private static final String EXPECTED =
      "give a steel of the table or an analysis such as \"C0.84 Mn0.75 Si0.22\"";

  /** The steel that an entry names. */
  static Steel steel(Entry entry) {
    return entry.reading().steels().of(entry);
  }

  private Steel of(Entry entry) {
    if (!(entry.value() instanceof TextValue text)) {
      throw entry.fault(entry.name() + ": " + entry.value().kind() + " is no steel", EXPECTED);
    }
    Steel steel = named(text.text().strip(), entry);
    before.add(steel.amongst(before));
    return before.get(before.size() - 1);
  }

  private Steel named(String name, Entry entry) {
    try {
      return find.apply(name).orElseThrow(() -> unknown(name, entry));
    } catch (IllegalArgumentException e) {
      throw entry.fault(entry.name() + ": " + e.getMessage(), EXPECTED);
    }
  }

  private Fault unknown(String name, Entry entry) {
    return entry.fault(
        "there is no steel '" + Fault.shown(name) + "'",
        nearest.apply(name).map(near -> "did you mean '" + near + "'?").orElse(EXPECTED));
  }
}
