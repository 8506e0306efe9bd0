package seamsoak.billet;

import java.util.Optional;
import java.util.function.Function;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue;
import seamsoak.steel.Steel;

/**
 * Looks up the steels that a billet names.
 *
 * @param find the steel of an id, an alias or a written analysis
 * @param nearest the known name nearest to a misspelt one
 */
record SteelReader(
    Function<String, Optional<Steel>> find, Function<String, Optional<String>> nearest)
    implements Fields.Reader<Steel> {
  @Override
  public Steel read(JsonValue value, String name) {
    String expected = "give a steel of the table or an analysis such as \"C0.84 Mn0.75 Si0.22\"";
    if (!(value instanceof JsonValue.TextValue text)) {
      throw new Fault(value.place(), name + ": " + value.kind() + " is no steel", expected);
    }
    try {
      return find.apply(text.text().strip())
          .orElseThrow(
              () ->
                  new Fault(
                      value.place(),
                      "there is no steel '" + Fault.shown(text.text()) + "'",
                      nearest
                          .apply(text.text().strip())
                          .map(near -> "did you mean '" + near + "'?")
                          .orElse(expected)));
    } catch (IllegalArgumentException e) {
      throw new Fault(value.place(), name + ": " + e.getMessage(), expected);
    }
  }
}
