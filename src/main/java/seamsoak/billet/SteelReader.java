package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue;
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
    List<Steel> before)
    implements Fields.Reader<Steel> {
  @Override
  public Steel read(JsonValue value, String name) {
    String expected = "give a steel of the table or an analysis such as \"C0.84 Mn0.75 Si0.22\"";
    if (!(value instanceof JsonValue.TextValue text)) {
      throw new Fault(value.place(), name + ": " + value.kind() + " is no steel", expected);
    }
    try {
      Steel steel =
          find.apply(text.text().strip())
              .orElseThrow(
                  () ->
                      new Fault(
                          value.place(),
                          "there is no steel '" + Fault.shown(text.text()) + "'",
                          nearest
                              .apply(text.text().strip())
                              .map(near -> "did you mean '" + near + "'?")
                              .orElse(expected)));
      before.add(steel.amongst(before));
      return before.get(before.size() - 1);
    } catch (IllegalArgumentException e) {
      throw new Fault(value.place(), name + ": " + e.getMessage(), expected);
    }
  }
}
