package seamsoak.page.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import seamsoak.billet.Step;
import seamsoak.billet.file.FormBook;
import seamsoak.billet.file.FormSheet;
import seamsoak.data.JsonEditor;
import seamsoak.data.JsonPath;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonValue.TextValue;

/**
 * What buttons do to a billet's parts: add, duplicate, take out, earlier, later. {@code
 * IllegalArgumentException} for what no button of ours sends.
 */
public record Acts(Editing billet) {
  private static final Pattern ACT = Pattern.compile("(copy|out|earlier|later|heat) (.{1,200})");
  private static final Pattern STEP = Pattern.compile("step ([a-z]+) ([0-9]{1,3})");
  private static final Pattern NUMBER = Pattern.compile("\\b[0-9]{1,3}\\b");
  private static final JsonPath QUENCHANTS = JsonPath.of("quenchants");
  private static final int GONE = 0;

  /** The billet after an act, written as a verb and what it is done to. */
  public Editing done(String act) {
    Matcher step = STEP.matcher(act);
    if (step.matches()) {
      return step(kind(step.group(1)), Integer.parseInt(step.group(2)));
    }
    if (act.equals("steel")) {
      return steel();
    }
    if (act.equals("quenchant")) {
      return set(QUENCHANTS.item(billet.size(QUENCHANTS)), Map.of("kind", ""));
    }
    Matcher m = ACT.matcher(act);
    if (!m.matches()) {
      throw new IllegalArgumentException("no act of ours");
    }
    JsonPath at = JsonPath.of(m.group(2));
    JsonValue there =
        billet.editor().at(at).orElseThrow(() -> new IllegalArgumentException("it is not there"));
    return switch (m.group(1)) {
      case "copy" -> copy(at, there);
      case "out" -> out(at);
      case "earlier" -> moved(at, -1);
      case "later" -> moved(at, 1);
      default -> heat(at);
    };
  }

  private static Step.Kind kind(String word) {
    return Step.Kind.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private Editing set(JsonPath at, Object value) {
    return billet.with(billet.editor().set(at, value));
  }

  private static int index(JsonPath at) {
    if (at.parts().isEmpty() || !(at.last() instanceof JsonPath.Item item)) {
      throw new IllegalArgumentException("no item of a list");
    }
    return item.index();
  }

  /** A step like the last of its kind before, or one with nothing in it yet. */
  private Editing step(Step.Kind kind, int at) {
    if (at > billet.size(Editing.STEPS)) {
      throw new IllegalArgumentException("beyond the last step");
    }
    Object fresh = like(kind, at);
    JsonEditor editor = billet.editor();
    JsonPath place = Editing.STEPS.item(at);
    JsonEditor more =
        at == billet.size(Editing.STEPS) ? editor.set(place, fresh) : editor.insert(place, fresh);
    return renumbered(more, n -> n > at ? n + 1 : n);
  }

  private Object like(Step.Kind kind, int before) {
    for (int i = before - 1; i >= 0; i--) {
      JsonValue other = billet.editor().at(Editing.STEPS.item(i)).orElseThrow();
      if (FormBook.kind(other).filter(k -> k == kind).isPresent()) {
        return Editing.planned(other);
      }
    }
    Map<String, Object> step = new LinkedHashMap<>();
    step.put("do", kind.word());
    FormSheet sheet = billet.book().step(kind);
    sheet.key("heats").ifPresent(h -> step.put("heats", List.of(Map.of())));
    return step;
  }

  private Editing steel() {
    int steels = billet.size(Editing.STEELS);
    Editing more = set(Editing.STEELS.item(steels), "");
    boolean each =
        billet.editor().at(Editing.THICKNESS).filter(v -> v instanceof ListValue).isPresent();
    return each ? new Acts(more).set(Editing.THICKNESS.item(steels), "") : more;
  }

  private Editing heat(JsonPath step) {
    JsonPath heats = step.key("heats");
    int size = billet.size(heats);
    Object fresh =
        size == 0
            ? Map.of()
            : Editing.planned(billet.editor().at(heats.item(size - 1)).orElseThrow());
    return set(heats.item(size), fresh);
  }

  private Editing copy(JsonPath at, JsonValue there) {
    int next = index(at) + 1;
    JsonEditor editor = billet.editor();
    JsonPath place = at.parent().item(next);
    Object fresh = Editing.planned(there);
    JsonEditor more =
        next == billet.size(at.parent()) ? editor.set(place, fresh) : editor.insert(place, fresh);
    return at.parent().equals(Editing.STEPS)
        ? renumbered(more, n -> n > next ? n + 1 : n)
        : billet.with(more);
  }

  private Editing out(JsonPath at) {
    if (at.parts().isEmpty() || at.equals(Editing.STACK) || at.equals(Editing.STEPS)) {
      throw new IllegalArgumentException("that has to be there");
    }
    boolean last = at.parent().equals(QUENCHANTS) && billet.size(QUENCHANTS) == 1;
    JsonEditor less = billet.editor().remove(last ? QUENCHANTS : at);
    if (at.parent().equals(Editing.STEPS)) {
      int gone = index(at) + 1;
      return renumbered(less, n -> n == gone ? GONE : n > gone ? n - 1 : n);
    }
    if (at.parent().equals(Editing.STEELS)) {
      JsonPath thickness = Editing.THICKNESS.item(index(at));
      return billet.with(less.at(thickness).isPresent() ? less.remove(thickness) : less);
    }
    return billet.with(less);
  }

  private Editing moved(JsonPath at, int by) {
    int from = index(at);
    int to = from + by;
    if (!at.parent().equals(Editing.STEPS) || to < 0 || to >= billet.size(Editing.STEPS)) {
      throw new IllegalArgumentException("it cannot go there");
    }
    return renumbered(
        billet.editor().move(at, to), n -> n == from + 1 ? to + 1 : n == to + 1 ? from + 1 : n);
  }

  /** What was seen names seams by the numbers of their steps, which change with the steps. */
  private Editing renumbered(JsonEditor editor, IntUnaryOperator number) {
    JsonEditor e = editor;
    int steps = billet.with(editor).size(Editing.STEPS);
    for (int i = 0; i < steps; i++) {
      JsonPath seen = Editing.STEPS.item(i).key("seen");
      List<JsonPath> looks = new ArrayList<>();
      e.at(seen)
          .ifPresent(
              v -> {
                if (v instanceof ListValue list) {
                  for (int k = 0; k < list.items().size(); k++) {
                    looks.add(seen.item(k));
                  }
                } else if (v instanceof ObjectValue) {
                  looks.add(seen);
                }
              });
      for (JsonPath look : looks) {
        for (String key : List.of("where", "seams")) {
          e = renumbered(e, look.key(key), number);
        }
      }
    }
    return billet.with(e);
  }

  private static JsonEditor renumbered(JsonEditor e, JsonPath at, IntUnaryOperator number) {
    if (e.at(at).isEmpty() || !(e.at(at).get() instanceof TextValue text)) {
      return e;
    }
    String named =
        NUMBER
            .matcher(text.text())
            .replaceAll(m -> "" + number.applyAsInt(Integer.parseInt(m.group())));
    return e.set(at, named);
  }
}
