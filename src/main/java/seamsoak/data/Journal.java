package seamsoak.data;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.data.JsonValue.NumberValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonValue.TextValue;

/**
 * What the program wrote to a file of the user's and how to take it back, the latest last. It is
 * put down before the file is written and after something is taken back, so that a run that is
 * killed in between leaves an entry too many and none too few.
 */
record Journal(List<Entry> entries) {
  private static final String ABOUT =
      "What seamsoak wrote to the file of this name, so that it can be taken back.";
  private static final int MOST_ENTRIES = 100;

  /** Of all that stood where something was written; what was written longest ago goes first. */
  private static final int MOST_LETTERS = 1 << 18;

  /**
   * One writing: a stretch of the text in the place of another.
   *
   * @param what it was
   * @param before SHA-256 of the file before it
   * @param after and after it
   * @param at where the stretch begins, in characters
   * @param length of it as written
   * @param was what stood there
   * @param id by which whoever sent it knows it again; empty for what was not sent
   */
  private record Entry(
      String what, String before, String after, int at, int length, String was, String id) {}

  Journal {
    entries = List.copyOf(entries);
  }

  /** Reads one; empty where there is none. {@link Fault} for a file that is something else. */
  static Journal read(Path file) {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return new Journal(List.of());
    }
    JsonValue root = JsonTree.read(file.toString(), file);
    if (!(member(root, "records") instanceof ListValue list)) {
      throw strange(root.place());
    }
    List<Entry> entries = new ArrayList<>();
    for (JsonValue item : list.items()) {
      entries.add(
          new Entry(
              text(item, "what"),
              text(item, "before"),
              text(item, "after"),
              number(item, "at"),
              number(item, "length"),
              text(item, "was"),
              ((ObjectValue) item).members().containsKey("id") ? text(item, "id") : ""));
    }
    return new Journal(entries);
  }

  private static String text(JsonValue item, String key) {
    if (member(item, key) instanceof TextValue text) {
      return text.text();
    }
    throw strange(item.place());
  }

  private static int number(JsonValue item, String key) {
    if (member(item, key) instanceof NumberValue number && number.value() >= 0) {
      return (int) number.value();
    }
    throw strange(item.place());
  }

  private static JsonValue member(JsonValue item, String key) {
    if (item instanceof ObjectValue object && object.members().containsKey(key)) {
      return object.members().get(key).value();
    }
    throw strange(item.place());
  }

  private static Fault strange(Place place) {
    return new Fault(
        place, "it is not as this program wrote it", "move it away, then nothing is taken back");
  }

  byte[] bytes() {
    List<Map<String, Object>> records = new ArrayList<>();
    for (Entry e : entries) {
      Map<String, Object> record = new LinkedHashMap<>();
      record.put("what", e.what());
      record.put("before", e.before());
      record.put("after", e.after());
      record.put("at", e.at());
      record.put("length", e.length());
      record.put("was", e.was());
      if (!e.id().isEmpty()) {
        record.put("id", e.id());
      }
      records.add(record);
    }
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("about", ABOUT);
    all.put("records", records);
    return JsonWriter.write(all).getBytes(StandardCharsets.UTF_8);
  }

  /** Without what was put down but not done when its run was killed. */
  Journal at(byte[] now) {
    String sum = Manifest.digest(now);
    boolean undone = !isEmpty() && !latest().after().equals(sum) && latest().before().equals(sum);
    return undone ? withoutLast().at(now) : this;
  }

  Journal with(String what, String id, byte[] before, byte[] after) {
    List<Entry> more = new ArrayList<>(entries);
    more.add(entry(what, id, before, after));
    while (more.size() > MOST_ENTRIES
        || more.stream().mapToInt(e -> e.was().length()).sum() > MOST_LETTERS) {
      more.remove(0);
    }
    return new Journal(more);
  }

  private static Entry entry(String what, String id, byte[] before, byte[] after) {
    String old = text(before);
    String now = text(after);
    int most = Math.min(old.length(), now.length());
    int at = 0;
    while (at < most && old.charAt(at) == now.charAt(at)) {
      at++;
    }
    // no character is cut in two
    at -= at > 0 && Character.isHighSurrogate(old.charAt(at - 1)) ? 1 : 0;
    int end = 0;
    while (end < most - at
        && old.charAt(old.length() - 1 - end) == now.charAt(now.length() - 1 - end)) {
      end++;
    }
    end -= end > 0 && Character.isLowSurrogate(old.charAt(old.length() - end)) ? 1 : 0;
    return new Entry(
        what,
        Manifest.digest(before),
        Manifest.digest(after),
        at,
        now.length() - end - at,
        old.substring(at, old.length() - end),
        id);
  }

  /** Whether something that was sent with an id was written. */
  boolean has(String id) {
    return entries.stream().anyMatch(e -> e.id().equals(id));
  }

  boolean isEmpty() {
    return entries.isEmpty();
  }

  private Entry latest() {
    return entries.get(entries.size() - 1);
  }

  /** What was written last. */
  String what() {
    return latest().what();
  }

  Journal withoutLast() {
    return new Journal(entries.subList(0, entries.size() - 1));
  }

  /** The file as it was before the last writing; empty when it is not as that left it. */
  Optional<byte[]> undo(byte[] now) {
    Entry last = latest();
    String text = text(now);
    if (!Manifest.digest(now).equals(last.after()) || last.at() + last.length() > text.length()) {
      return Optional.empty();
    }
    String old =
        text.substring(0, last.at()) + last.was() + text.substring(last.at() + last.length());
    return Optional.of(old.getBytes(StandardCharsets.UTF_8))
        .filter(b -> Manifest.digest(b).equals(last.before()));
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
