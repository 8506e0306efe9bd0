package seamsoak.data;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.JsonEntries.Entry;

/**
 * The text of a JSON file in which single values are changed. All that is not changed keeps its
 * bytes: blanks, comments, line ends, the order of keys, the way a number is written. What is put
 * in looks like its neighbors; what is moved or taken out takes along the comments right above it
 * and behind it on its line.
 *
 * <p>Values are maps, lists, texts, numbers and truths, as {@link JsonWriter} takes them.
 */
public final class JsonEditor {
  private final String file;
  private final String text;

  /** The same, character for character, where the text has typographic quotes. */
  private final String json;

  private final JsonValue root;
  private final JsonStyle style;

  /** {@link Fault} for text that is not JSON. */
  public JsonEditor(String file, String text) {
    this.file = file;
    this.text = text;
    Faults faults = new Faults();
    this.root = JsonTree.parse(file, text, faults);
    faults.throwAny();
    this.json = JsonTree.isStrict(text) ? text : Quotes.straight(text);
    this.style = JsonStyle.of(text);
  }

  public String text() {
    return text;
  }

  /** The value at a path, if there is one. */
  public Optional<JsonValue> at(JsonPath path) {
    JsonValue value = root;
    for (JsonPath.Part part : path.parts()) {
      int index = index(value, part);
      if (index < 0) {
        return Optional.empty();
      }
      value = children(value).get(index);
    }
    return Optional.of(value);
  }

  /**
   * Makes a value be what is given. Of one that is there only what differs is touched; one that is
   * not comes last in its object or list, which is made where it is missing.
   */
  public JsonEditor set(JsonPath path, Object value) {
    Optional<JsonValue> there = at(path);
    if (there.isPresent()) {
      return changed(path, there.get(), value);
    }
    Optional<JsonValue> holder = at(path.parent());
    int size = holder.map(h -> children(h).size()).orElse(0);
    boolean fits =
        path.last() instanceof JsonPath.Item item
            ? item.index() == size && holder.map(h -> h instanceof JsonValue.ListValue).orElse(true)
            : holder.map(h -> h instanceof JsonValue.ObjectValue).orElse(true);
    if (!fits) {
      throw new IllegalArgumentException("there is no place for " + path);
    }
    if (holder.isEmpty()) {
      return set(
          path.parent(),
          path.last() instanceof JsonPath.Key k ? Map.of(k.name(), value) : List.of(value));
    }
    return inserted(path, size, value);
  }

  /** Puts an item into a list before the one that is there. */
  public JsonEditor insert(JsonPath path, Object value) {
    if (at(path.parent()).isPresent() && path.last() instanceof JsonPath.Item item) {
      return inserted(path, item.index(), value);
    }
    throw new IllegalArgumentException("there is no place for " + path);
  }

  /** Takes an entry out, with its key. */
  public JsonEditor remove(JsonPath path) {
    return with(entries(path.parent()).without(place(path)).put(style));
  }

  /** Moves an item within its list, to where the other one is now. */
  public JsonEditor move(JsonPath item, int to) {
    return with(entries(item.parent()).moved(place(item), to).put(style));
  }

  /** Makes a value the only item of a list. */
  public JsonEditor enlist(JsonPath path) {
    int start = start(path);
    int end = JsonScan.valueEnd(json, start);
    String list = '[' + style.inBrackets() + text.substring(start, end) + style.inBrackets() + ']';
    return with(text.substring(0, start) + list + text.substring(end));
  }

  private JsonEditor changed(JsonPath path, JsonValue there, Object value) {
    JsonEditor e = this;
    if (there instanceof JsonValue.ObjectValue object && value instanceof Map<?, ?> map) {
      for (String key : object.members().keySet()) {
        e = map.containsKey(key) ? e : e.remove(path.key(key));
      }
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        e = e.set(path.key((String) entry.getKey()), entry.getValue());
      }
      return e;
    }
    if (there instanceof JsonValue.ListValue items && value instanceof List<?> list) {
      for (int i = items.items().size() - 1; i >= list.size(); i--) {
        e = e.remove(path.item(i));
      }
      for (int i = 0; i < list.size(); i++) {
        e = e.set(path.item(i), list.get(i));
      }
      return e;
    }
    if (isSame(there, value)) {
      return this;
    }
    int start = start(path);
    int end = JsonScan.valueEnd(json, start);
    int room = JsonStyle.WIDTH - JsonStyle.lineLength(text, start) + end - start;
    String written = style.write(value, style.indentAt(text, start), room);
    return with(text.substring(0, start) + written + text.substring(end));
  }

  private static boolean isSame(JsonValue there, Object value) {
    if (there instanceof JsonValue.NumberValue n && value instanceof Number number) {
      return new BigDecimal(n.digits()).compareTo(new BigDecimal(number.toString())) == 0;
    }
    return there instanceof JsonValue.TextValue t && t.text().equals(value)
        || there instanceof JsonValue.BooleanValue b && value.equals(b.value());
  }

  private JsonEditor inserted(JsonPath path, int index, Object value) {
    JsonEntries all = entries(path.parent());
    String key = path.last() instanceof JsonPath.Key k ? style.key(k.name()) : "";
    String outer = style.indentAt(text, all.start());
    String line = style.lineEnd() + outer + style.step();
    if (all.size() == 0) {
      return with(first(all, key, value, outer));
    }
    // the neighbor before, unless it is the first: that one may stand behind its bracket
    String model = all.glue().get(Math.min(Math.max(index - 1, 1), all.size() - 1));
    if (JsonScan.lineEnds(model) == 0) {
      int beside = all.entries().get(Math.max(index - 1, 0)).start();
      int room = JsonStyle.WIDTH - JsonStyle.lineLength(text, beside) - key.length() - 2;
      String written = style.write(value, outer, Integer.MAX_VALUE);
      if (written.length() <= room) {
        return with(all.with(index, Entry.fresh(key, written), style.afterComma()).put(style));
      }
      model = line;
    }
    String indent = style.indentAt(model, model.length());
    String written =
        style.write(value, indent, JsonStyle.WIDTH - indent.length() - key.length() - 1);
    return with(all.with(index, Entry.fresh(key, written), style.lineEnd() + indent).put(style));
  }

  /** The text with a first entry where there was none. */
  private String first(JsonEntries all, String key, Object value, String outer) {
    String before = all.glue().get(0);
    boolean comments = JsonScan.afterBlank(before, 0) < before.length();
    String pad = text.charAt(all.start()) == '{' ? style.inBraces() : style.inBrackets();
    int room = JsonStyle.WIDTH - JsonStyle.lineLength(text, all.start()) - key.length() - 2;
    String written = style.write(value, outer, comments ? JsonStyle.WIDTH : room);
    Entry entry = Entry.fresh(key, written);
    String line = style.lineEnd() + outer;
    return comments
        ? all.with(entry, before.stripTrailing() + line + style.step(), line).put(style)
        : all.with(entry, pad, pad).put(style);
  }

  private JsonEditor with(String text) {
    return text.equals(this.text) ? this : new JsonEditor(file, text);
  }

  private JsonEntries entries(JsonPath path) {
    return JsonEntries.at(text, json, start(path), path.parts().isEmpty());
  }

  /** Which of its neighbors a value is. */
  private int place(JsonPath path) {
    int index = index(at(path.parent()).orElseThrow(), path.last());
    if (index < 0) {
      throw new IllegalArgumentException("there is no " + path);
    }
    return index;
  }

  /** Where a value that exists begins in the text. */
  private int start(JsonPath path) {
    int start = JsonScan.afterComments(json, 0);
    JsonValue value = root;
    for (JsonPath.Part part : path.parts()) {
      int index = index(value, part);
      start = JsonEntries.at(text, json, start, false).entries().get(index).start();
      value = children(value).get(index);
    }
    return start;
  }

  private static List<JsonValue> children(JsonValue value) {
    if (value instanceof JsonValue.ObjectValue object) {
      return object.members().values().stream().map(JsonValue.Member::value).toList();
    }
    return value instanceof JsonValue.ListValue list ? list.items() : List.of();
  }

  /** Which child is meant; negative where there is none. */
  private static int index(JsonValue value, JsonPath.Part part) {
    if (part instanceof JsonPath.Item item && value instanceof JsonValue.ListValue list) {
      return item.index() < list.items().size() ? item.index() : -1;
    }
    return part instanceof JsonPath.Key key && value instanceof JsonValue.ObjectValue object
        ? new ArrayList<>(object.members().keySet()).indexOf(key.name())
        : -1;
  }
}
