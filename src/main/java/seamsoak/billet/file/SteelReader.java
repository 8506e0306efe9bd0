package seamsoak.billet.file;

import java.util.List;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.steel.Steel;

/** Looks up the steels that a billet names. */
final class SteelReader {
  private static final String EXPECTED =
      "give a steel of the table or an analysis such as \"C0.84 Mn0.75 Si0.22\"";

  /** The steel that an entry names. */
  static final Reader<Steel> STEEL = SteelReader::steel;

  private SteelReader() {}

  /** The steel that an entry names; one that the file names twice goes by the first name. */
  static Steel steel(Entry entry) {
    if (!(entry.value() instanceof TextValue text)) {
      throw entry.fault(entry.name() + ": " + entry.value().kind() + " is no steel", EXPECTED);
    }
    List<Steel> before = entry.reading().steels();
    before.add(named(text.text().strip(), entry).amongst(before));
    return before.get(before.size() - 1);
  }

  private static Steel named(String name, Entry entry) {
    try {
      return entry.reading().names().steel().apply(name).orElseThrow(() -> unknown(name, entry));
    } catch (IllegalArgumentException e) {
      throw entry.fault(entry.name() + ": " + e.getMessage(), EXPECTED);
    }
  }

  private static Fault unknown(String name, Entry entry) {
    Names names = entry.reading().names();
    return entry.fault(
        "there is no steel '" + Fault.shown(name) + "'",
        names
            .trade()
            .means("steel", name)
            .or(() -> names.nearest().apply(name).map(near -> "did you mean '" + near + "'?"))
            .orElse(EXPECTED));
  }
}
