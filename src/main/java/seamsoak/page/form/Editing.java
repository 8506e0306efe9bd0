package seamsoak.page.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import seamsoak.billet.file.FormBook;
import seamsoak.billet.file.FormKey;
import seamsoak.data.JsonEditor;
import seamsoak.data.JsonPath;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonValue.TextValue;

/**
 * The text of a billet of which single fields are changed. {@code IllegalArgumentException} for
 * what no form of ours sends.
 *
 * @param editor of the text
 * @param book what fields there are
 */
public record Editing(JsonEditor editor, FormBook book) {
  static final JsonPath STACK = JsonPath.of("stack");
  static final JsonPath STEELS = JsonPath.of("stack.steels");
  static final JsonPath THICKNESS = JsonPath.of("stack.thickness");
  static final JsonPath STEPS = JsonPath.of("steps");

  private static final int LONGEST = 500;
  private static final Set<String> OF_THE_PAST = Set.of("done", "seen");

  public static Editing of(String text, FormBook book) {
    return new Editing(new JsonEditor("the billet", text), book);
  }

  public String text() {
    return editor.text();
  }

  public JsonValue root() {
    return editor.at(JsonPath.ROOT).orElseThrow();
  }

  /** What stands in a field; empty where nothing does. */
  public String value(JsonPath field) {
    Optional<JsonValue> there = editor.at(field);
    if (there.isEmpty() && oneForAll() && field.parent().equals(THICKNESS)) {
      there = editor.at(THICKNESS);
    }
    return there.map(Editing::shown).orElse("");
  }

  private static String shown(JsonValue value) {
    return value instanceof TextValue text
        ? text.text()
        : value instanceof NumberValue number ? number.digits() : "";
  }

  /** Whether all pieces of the stack are told to be as thick. */
  private boolean oneForAll() {
    return editor.at(THICKNESS).filter(v -> !(v instanceof ListValue)).isPresent();
  }

  /** With another value in a field; blank to leave it out. */
  public Editing set(String name, String value) {
    JsonPath field = JsonPath.of(name);
    FormKey.Way way =
        book.find(root(), field)
            .orElseThrow(() -> new IllegalArgumentException("no field of ours"))
            .way();
    String text = value.strip();
    if (text.length() > LONGEST || !fills(way)) {
      throw new IllegalArgumentException("no value of a field");
    }
    if (text.equals(value(field).strip())) {
      return this;
    }
    JsonEditor ready = ready(field);
    if (!text.isEmpty()) {
      return with(ready.set(field, FormKey.written(way, text)));
    }
    return field.last() instanceof JsonPath.Item
        ? with(ready.set(field, ""))
        : with(pruned(ready.remove(field), field.parent()));
  }

  private static boolean fills(FormKey.Way way) {
    return way instanceof FormKey.Amount
        || way instanceof FormKey.Prose
        || way instanceof FormKey.SteelName
        || way instanceof FormKey.OneOf
        || way instanceof FormKey.Inside inside && inside.orNone();
  }

  /** One text for all becomes one for each, and a word gives way to an object. */
  private JsonEditor ready(JsonPath field) {
    if (field.parent().equals(THICKNESS) && oneForAll()) {
      String all = value(THICKNESS);
      return editor.set(
          THICKNESS,
          new ArrayList<>(
              Collections.nCopies(
                  Math.max(1, size(STEELS)), FormKey.written(new FormKey.Amount(), all))));
    }
    boolean word = editor.at(field.parent()).filter(v -> v instanceof TextValue).isPresent();
    return word ? editor.set(field.parent(), Map.of()) : editor;
  }

  /** Objects that hold nothing any more go, but for those that have to be there. */
  private static JsonEditor pruned(JsonEditor editor, JsonPath object) {
    boolean empty =
        editor
            .at(object)
            .filter(v -> v instanceof ObjectValue o && o.members().isEmpty())
            .isPresent();
    return empty
            && !object.parts().isEmpty()
            && object.last() instanceof JsonPath.Key
            && !object.equals(STACK)
        ? pruned(editor.remove(object), object.parent())
        : editor;
  }

  public int size(JsonPath list) {
    return editor.at(list).map(v -> v instanceof ListValue l ? l.items().size() : 0).orElse(0);
  }

  public Editing with(JsonEditor other) {
    return new Editing(other, book);
  }

  /** A value as it is written anew, without what was done and seen. */
  public static Object planned(JsonValue value) {
    if (value instanceof ObjectValue object) {
      Map<String, Object> all = new LinkedHashMap<>();
      object
          .members()
          .forEach(
              (key, member) -> {
                if (!OF_THE_PAST.contains(key)) {
                  all.put(key, planned(member.value()));
                }
              });
      return all;
    }
    if (value instanceof ListValue list) {
      List<Object> all = new ArrayList<>();
      list.items().forEach(item -> all.add(planned(item)));
      return all;
    }
    if (value instanceof NumberValue number) {
      return new BigDecimal(number.digits());
    }
    return value instanceof JsonValue.BooleanValue b ? b.value() : shown(value);
  }

  /** Those of the fields that were sent which say otherwise than this. */
  public Map<String, String> touched(Map<String, String> sent) {
    Map<String, String> touched = new LinkedHashMap<>();
    sent.forEach(
        (field, said) -> {
          if (!said.strip().equals(value(JsonPath.of(field)).strip())) {
            touched.put(field, said.strip());
          }
        });
    return touched;
  }
}
