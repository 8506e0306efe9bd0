package seamsoak.data;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The way from the root of a JSON tree to one of its values, such as {@code steps[3].heats[0].at}.
 *
 * @param parts each a key or the index of an item
 */
public record JsonPath(List<Part> parts) {
  private static final Pattern PART = Pattern.compile("\\G(?:\\.?([^.\\[\\]]+)|\\[([0-9]{1,6})])");

  /** One turn of the way. */
  public sealed interface Part {}

  public record Key(String name) implements Part {}

  /** Counted from 0. */
  public record Item(int index) implements Part {}

  /** The root itself. */
  public static final JsonPath ROOT = new JsonPath(List.of());

  public JsonPath {
    parts = List.copyOf(parts);
  }

  /** Reads what {@link #toString} gives, for keys without dots and brackets. */
  public static JsonPath of(String text) {
    JsonPath path = ROOT;
    Matcher part = PART.matcher(text);
    int end = 0;
    while (part.find()) {
      path =
          part.group(1) == null
              ? path.item(Integer.parseInt(part.group(2)))
              : path.key(part.group(1));
      end = part.end();
    }
    if (end < text.length()) {
      throw new IllegalArgumentException(text + " is no way to a value");
    }
    return path;
  }

  public JsonPath key(String name) {
    return with(new Key(name));
  }

  public JsonPath item(int index) {
    return with(new Item(index));
  }

  private JsonPath with(Part last) {
    List<Part> all = new ArrayList<>(parts);
    all.add(last);
    return new JsonPath(all);
  }

  /** Without its last turn. */
  public JsonPath parent() {
    return new JsonPath(parts.subList(0, parts.size() - 1));
  }

  public Part last() {
    return parts.get(parts.size() - 1);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (Part part : parts) {
      if (part instanceof Key key) {
        text.append(text.isEmpty() ? "" : ".").append(key.name());
      } else if (part instanceof Item item) {
        text.append('[').append(item.index()).append(']');
      }
    }
    return text.toString();
  }
}
