package seamsoak.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Random edits of random files full of comments: each is made beside on a plain tree, and the text
 * has to say the same.
 */
@Tag("long")
class JsonEditorRandomTest {
  private static final int FILES = Boolean.getBoolean("long") ? 2000 : 60;
  private static final int EDITS = 20;
  private static final Pattern COMMENT = Pattern.compile("<[0-9]+>");

  private SplittableRandom random;
  private String lineEnd;
  private int comments;
  private int added;
  private StringBuilder text;

  @Test
  void everyEditSaysWhatItShouldAndLeavesTheRest() {
    long first = Boolean.getBoolean("long") ? System.nanoTime() : 1;
    for (long seed = first; seed < first + FILES; seed++) {
      random = new SplittableRandom(seed);
      lineEnd = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
      comments = 0;
      text = new StringBuilder();
      Map<String, Object> tree = object(3);
      blanks();
      write(tree);
      blanks();
      JsonEditor editor = new JsonEditor("any.json", text.toString());
      for (int i = 0; i < EDITS; i++) {
        String before = editor.text();
        lineEnd = before.contains(lineEnd) ? lineEnd : "\n";
        try {
          editor = edited(editor, tree);
        } catch (AssertionError | RuntimeException e) {
          throw new AssertionError("seed " + seed + ", edit " + i + " of:\n" + before, e);
        }
      }
    }
  }

  private JsonEditor edited(JsonEditor editor, Map<String, Object> tree) {
    // somewhere in the tree
    Object holder = tree;
    JsonPath path = JsonPath.ROOT;
    while (random.nextInt(4) > 0) {
      int index = random.nextInt(Math.max(1, size(holder)));
      Object child = size(holder) == 0 ? "" : child(holder, index);
      if (!(child instanceof Map) && !(child instanceof List)) {
        break;
      }
      path = step(path, holder, index);
      holder = child;
    }
    int size = size(holder);
    int index = size == 0 ? 0 : random.nextInt(size);
    int choice = size == 0 ? 0 : random.nextInt(5);
    JsonEditor after;
    boolean drops = false;
    boolean moves = false;
    if (choice == 0) { // one more
      Object value = value(1);
      if (holder instanceof Map<?, ?> map) {
        String key = "new" + added++;
        after = editor.set(path.key(key), value);
        objects(map).put(key, value);
      } else {
        int at = size == 0 ? 0 : random.nextInt(size + 1);
        after = at == size ? editor.set(path.item(at), value) : editor.insert(path.item(at), value);
        items(holder).add(at, value);
      }
    } else if (choice == 1) {
      after = editor.remove(step(path, holder, index));
      drops = true;
      if (holder instanceof Map<?, ?> map) {
        map.remove(key(map, index));
      } else {
        items(holder).remove(index);
      }
    } else if (choice == 2 && holder instanceof List) {
      int to = random.nextInt(size);
      after = editor.move(path.item(index), to);
      moves = true;
      items(holder).add(to, items(holder).remove(index));
    } else if (choice == 3) {
      after = editor.enlist(step(path, holder, index));
      put(holder, index, new ArrayList<>(List.of(child(holder, index))));
    } else {
      Object old = child(holder, index);
      Object value = value(1);
      after = editor.set(step(path, holder, index), value);
      drops = old instanceof Map || old instanceof List;
      put(holder, index, merged(old, value));
      if (!drops && !(value instanceof Map) && !(value instanceof List)) {
        onlyOnePlace(editor.text(), after.text(), old, value);
      }
    }
    assertEquals(plain(tree), plain(JsonTree.parse("after.json", after.text())), after.text());
    commentsStay(editor.text(), after.text(), drops, moves);
    String others = after.text().replace(lineEnd, "");
    assertTrue(others.chars().noneMatch(c -> c == '\n' || c == '\r'), "a strange line end");
    assertEquals(after.text(), after.set(JsonPath.ROOT, tree).text(), "the same, written again");
    return after;
  }

  /** What a value becomes where another stood: keys that were there keep their order. */
  private static Object merged(Object old, Object value) {
    if (old instanceof Map<?, ?> was && value instanceof Map<?, ?> now) {
      Map<String, Object> merged = new LinkedHashMap<>();
      objects(was).keySet().stream().filter(now::containsKey).forEach(k -> merged.put(k, ""));
      objects(now).forEach((k, v) -> merged.put(k, merged(was.get(k), v)));
      return merged;
    }
    if (old instanceof List<?> was && value instanceof List<?> now) {
      List<Object> merged = new ArrayList<>();
      for (int i = 0; i < now.size(); i++) {
        merged.add(merged(i < was.size() ? was.get(i) : null, now.get(i)));
      }
      return merged;
    }
    return value;
  }

  private static void onlyOnePlace(String before, String after, Object old, Object value) {
    int same = 0;
    while (same < Math.min(before.length(), after.length())
        && before.charAt(same) == after.charAt(same)) {
      same++;
    }
    int end = 0;
    while (end < Math.min(before.length(), after.length()) - same
        && before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
      end++;
    }
    int longest = JsonStyle.quoted(old.toString()).length();
    assertTrue(before.length() - same - end <= longest, "more was changed than the value");
    assertTrue(after.length() - same - end <= JsonStyle.quoted(value.toString()).length());
  }

  private static void commentsStay(String before, String after, boolean drops, boolean moves) {
    List<String> old = all(before);
    List<String> now = all(after);
    if (drops) {
      Iterator<String> left = old.iterator();
      for (String comment : now) {
        while (!left.next().equals(comment)) {} // throws where it is not among those left
      }
    } else {
      assertEquals(
          moves ? old.stream().sorted().toList() : old,
          moves ? now.stream().sorted().toList() : now);
    }
  }

  private static List<String> all(String text) {
    return COMMENT.matcher(text).results().map(MatchResult::group).toList();
  }

  private Map<String, Object> object(int depth) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = random.nextInt(5); i > 0; i--) {
      object.put("key " + i, value(depth - 1));
    }
    return object;
  }

  private Object value(int depth) {
    return switch (random.nextInt(depth > 0 ? 6 : 4)) {
      case 0 -> "a \"text\" {[/*,//" + random.nextInt(100);
      case 1 -> random.nextInt(1000);
      case 2 -> new BigDecimal("1.50").add(BigDecimal.valueOf(random.nextInt(9)));
      case 3 -> random.nextBoolean();
      case 4 -> object(depth);
      default -> {
        List<Object> list = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
          list.add(value(depth - 1));
        }
        yield list;
      }
    };
  }

  private void write(Object value) {
    if (value instanceof Map<?, ?> map) {
      text.append('{');
      boolean more = false;
      for (Map.Entry<?, ?> e : map.entrySet()) {
        comma(more);
        text.append(JsonStyle.quoted((String) e.getKey()));
        blanks();
        text.append(':');
        blanks();
        write(e.getValue());
        more = true;
      }
      blanks();
      text.append('}');
    } else if (value instanceof List<?> list) {
      text.append('[');
      boolean more = false;
      for (Object item : list) {
        comma(more);
        write(item);
        more = true;
      }
      blanks();
      text.append(']');
    } else {
      text.append(value instanceof String s ? JsonStyle.quoted(s) : value.toString());
    }
  }

  private void comma(boolean more) {
    if (more) {
      blanks();
      text.append(',');
    }
    blanks();
  }

  private void blanks() {
    while (random.nextInt(3) > 0) {
      switch (random.nextInt(6)) {
        case 0 -> text.append(lineEnd).append(" ".repeat(random.nextInt(5)));
        case 1 -> text.append("// <").append(comments++).append("> it's \"").append(lineEnd);
        case 2 -> text.append("/* <").append(comments++).append("> } */");
        case 3 -> text.append("/* <").append(comments++).append(">").append(lineEnd).append("*/");
        default -> text.append(' ');
      }
    }
  }

  private static Object plain(Object value) {
    if (value instanceof JsonValue.ObjectValue object) {
      Map<String, Object> map = new LinkedHashMap<>();
      object.members().forEach((k, m) -> map.put(k, m.value()));
      return plain(map);
    }
    if (value instanceof JsonValue.ListValue list) {
      return plain(list.items());
    }
    if (value instanceof Map<?, ?> map) {
      List<Object> entries = new ArrayList<>(); // a list, since the order counts
      map.forEach((k, v) -> entries.add(k + "=" + plain(v)));
      return "{" + entries + "}";
    }
    if (value instanceof List<?> list) {
      return list.stream().map(JsonEditorRandomTest::plain).toList().toString();
    }
    return value instanceof JsonValue.TextValue text
        ? text.text()
        : value instanceof JsonValue.NumberValue n
            ? n.digits()
            : value instanceof JsonValue.BooleanValue b ? "" + b.value() : value.toString();
  }

  private static JsonPath step(JsonPath path, Object holder, int index) {
    return holder instanceof Map<?, ?> map ? path.key(key(map, index)) : path.item(index);
  }

  private static int size(Object holder) {
    return holder instanceof Map<?, ?> map ? map.size() : items(holder).size();
  }

  private static String key(Map<?, ?> map, int index) {
    return List.copyOf(objects(map).keySet()).get(index);
  }

  private static Object child(Object holder, int index) {
    return holder instanceof Map<?, ?> map ? map.get(key(map, index)) : items(holder).get(index);
  }

  private static void put(Object holder, int index, Object value) {
    if (holder instanceof Map<?, ?> map) {
      objects(map).put(key(map, index), value);
    } else {
      items(holder).set(index, value);
    }
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> objects(Map<?, ?> map) {
    return (Map<String, Object>) map;
  }

  @SuppressWarnings("unchecked")
  private static List<Object> items(Object list) {
    return (List<Object>) list;
  }
}
