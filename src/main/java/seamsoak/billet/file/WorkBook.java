package seamsoak.billet.file;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Heat;
import seamsoak.billet.Step;
import seamsoak.data.JsonEditor;
import seamsoak.data.JsonPath;
import seamsoak.data.JsonValue;

/**
 * The text of a billet file into which is written what was done and what was seen. What the values
 * mean is for {@link BilletReader} to say: here they are what the smith wrote.
 *
 * @param editor of the text
 */
public record WorkBook(JsonEditor editor) {
  private static final String DONE = "done";
  private static final String CURVE = "curve";
  private static final JsonPath CURVES = JsonPath.ROOT.key("curves");

  /** One entry of a heat, and which of the heats alike is meant, both from 0. */
  private record Turn(JsonPath heat, int repeat) {}

  /**
   * The text of a file that was read without fault.
   *
   * @param file as the user wrote its name
   */
  public static WorkBook of(String file, String text) {
    return new WorkBook(new JsonEditor(file, text));
  }

  public String text() {
    return editor.text();
  }

  /**
   * Writes how one stay in the fire went; nothing for as planned. One of the two may be missing.
   */
  public WorkBook heat(Step step, int number, Map<String, String> how) {
    Turn turn = turn(step, number);
    Map<String, Object> entry = new LinkedHashMap<>();
    Optional.ofNullable(how.get("on")).ifPresent(on -> entry.put("on", on));
    Optional.ofNullable(how.get(CURVE)).ifPresent(name -> entry.put(CURVE, name));
    if (how.containsKey("at") || how.containsKey("for")) {
      for (String key : List.of("at", "for")) {
        entry.put(
            key,
            how.containsKey(key) ? FormKey.amount(how.get(key)) : planned(turn.heat().key(key)));
      }
    }
    JsonPath done = turn.heat().key(DONE);
    List<Object> all = new ArrayList<>(Collections.nCopies(turn.repeat(), Map.of()));
    all.add(entry);
    if (editor.at(done).isEmpty()) {
      return new WorkBook(editor.set(done, all));
    }
    JsonEditor filled = editor;
    for (int i = 0; i < all.size(); i++) {
      JsonPath item = done.item(i);
      boolean keep = i < turn.repeat() && filled.at(item).isPresent();
      filled = keep ? filled : filled.set(item, all.get(i));
    }
    return new WorkBook(filled);
  }

  /** Writes how one stay in the fire went, by its log, under a name that no other curve has. */
  public WorkBook logged(Step step, int number, String name, Map<String, Object> curve) {
    Turn turn = turn(step, number);
    JsonPath before = turn.heat().key(DONE).item(turn.repeat()).key(CURVE);
    String own = editor.at(before).isPresent() ? planned(before).toString() : free(name);
    WorkBook written = new WorkBook(editor.set(CURVES.key(own), curve));
    return written.heat(step, number, Map.of(CURVE, own));
  }

  private String free(String name) {
    String free = name;
    for (int i = 2; editor.at(CURVES.key(free)).isPresent(); i++) {
      free = name + " " + i;
    }
    return free;
  }

  /** Adds a step behind all others, as it is planned. */
  public WorkBook append(Map<String, Object> step) {
    JsonPath steps = JsonPath.ROOT.key("steps");
    int there = ((JsonValue.ListValue) editor.at(steps).orElseThrow()).items().size();
    return new WorkBook(editor.set(steps.item(there), step));
  }

  /** Writes how a step came out. */
  public WorkBook step(Step step, Map<String, String> how) {
    return new WorkBook(editor.set(path(step).key(DONE), written(how)));
  }

  /** Adds what was seen after a step. */
  public WorkBook seen(Step step, Map<String, String> look) {
    JsonPath seen = path(step).key("seen");
    boolean single = editor.at(seen).filter(v -> v instanceof JsonValue.ObjectValue).isPresent();
    JsonEditor list = single ? editor.enlist(seen) : editor;
    int looks = list.at(seen).map(v -> ((JsonValue.ListValue) v).items().size()).orElse(0);
    Map<String, Object> entry = written(look);
    return new WorkBook(list.set(seen.item(looks), entry));
  }

  /** Whether something is recorded of a stay in the fire. */
  public boolean hasHeat(Step step, int number) {
    Turn turn = turn(step, number);
    return editor.at(turn.heat().key(DONE).item(turn.repeat())).isPresent();
  }

  /** Whether it is recorded how a step came out. */
  public boolean hasStep(Step step) {
    return editor.at(path(step).key(DONE)).isPresent();
  }

  /** What is planned of a stay in the fire under a key, as the smith wrote it. */
  public Optional<String> planned(Step step, int number, String key) {
    return shown(turn(step, number).heat().key(key));
  }

  /** The same of a step. */
  public Optional<String> planned(Step step, String key) {
    return shown(path(step).key(key));
  }

  private Optional<String> shown(JsonPath path) {
    return editor.at(path).isEmpty() ? Optional.empty() : Optional.of(planned(path).toString());
  }

  private Object planned(JsonPath path) {
    JsonValue value = editor.at(path).orElseThrow();
    return value instanceof JsonValue.NumberValue number
        ? new BigDecimal(number.digits())
        : ((JsonValue.TextValue) value).text();
  }

  private static Map<String, Object> written(Map<String, String> values) {
    Map<String, Object> written = new LinkedHashMap<>();
    values.forEach((key, value) -> written.put(key, FormKey.amount(value)));
    return written;
  }

  private static JsonPath path(Step step) {
    return JsonPath.ROOT.key("steps").item(step.mark().number() - 1);
  }

  private static Turn turn(Step step, int number) {
    int before = 0;
    for (int i = 0; i < step.heats().size(); i++) {
      Heat heat = step.heats().get(i);
      if (number <= before + heat.times()) {
        return new Turn(path(step).key("heats").item(i), number - before - 1);
      }
      before += heat.times();
    }
    throw new IllegalArgumentException(step.title() + " has no heat " + number);
  }
}
