package seamsoak.billet.file;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import seamsoak.billet.Step;
import seamsoak.data.DataFolder;
import seamsoak.data.JsonPath;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.property.hardening.Quenchant;
import seamsoak.property.hardening.QuenchantTable;

/**
 * The objects of a billet file as forms to fill in: their keys as the reader has them, and what
 * each means as {@code BILLET.md} has it.
 */
public final class FormBook {
  private static final String PAGE = "BILLET.md";
  private static final String FILE = "the file";
  private static final String EVERY_STEP = "every step";
  private static final Pattern ROW =
      Pattern.compile("\\| `([a-z0-9]+)` \\| (•?) ?\\| `(.*)` \\| (.+) \\|");
  private static final Pattern BLOCK = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL);

  /** A line of a table of the page. */
  record Line(String key, boolean needed, String example, String meaning) {}

  /** A key, and how it is filled in at one place: a list's item has a way of its own. */
  public record Found(FormKey key, FormKey.Way way) {}

  private final Map<String, Form<?>> forms = forms();
  private final Map<String, List<Line>> tables;
  private final List<String> patterns;
  private final QuenchantTable quenchants;
  private final FormSheet file;
  private final Map<Step.Kind, FormSheet> steps = new EnumMap<>(Step.Kind.class);

  /** Reads {@code BILLET.md}. */
  public FormBook(Names names, DataFolder data) {
    String page = data.text(PAGE);
    this.tables = tables(page);
    this.patterns = patterns(page);
    this.quenchants = names.quenchants();
    this.file = sheet(FILE, BilletReader.BILLET);
    for (Step.Kind kind : Step.Kind.values()) {
      steps.put(kind, sheet(title(kind), StepReader.form(kind)));
    }
  }

  /** The objects of a file by the headings of their tables. */
  static Map<String, Form<?>> forms() {
    Map<String, Form<?>> all = new LinkedHashMap<>();
    all.put(FILE, BilletReader.BILLET);
    all.put("stack", StackReader.STACK);
    all.put("a heat", HeatReader.HEAT);
    all.put("done of a heat", HeatReader.DONE_FORM);
    all.put("seen", SeenReader.SEEN);
    all.put("jacket", StepReader.JACKET);
    all.put("can", StepReader.CAN);
    all.put("soak, what is allowed", BilletReader.SOAK_WISH);
    all.put("blade", ShopReader.BLADE);
    all.put("equipment", ShopReader.EQUIPMENT);
    all.put("kiln", ShopReader.KILN);
    all.put("a quenchant", ShopReader.BATH);
    all.put("visible", BilletReader.WHAT_SHOWS);
    all.put("a curve", CurveReader.CURVE);
    for (Step.Kind kind : Step.Kind.values()) {
      all.put(title(kind), StepReader.form(kind));
    }
    return all;
  }

  private static String title(Step.Kind kind) {
    return kind == Step.Kind.SOAK ? "soak, a step" : kind.word();
  }

  /** The tables of the page by their headings; steps also have the lines of every step. */
  static Map<String, List<Line>> tables(String page) {
    Map<String, List<Line>> all = new LinkedHashMap<>();
    List<Line> open = new ArrayList<>();
    for (String line : page.lines().toList()) {
      Matcher row = ROW.matcher(line);
      if (line.startsWith("### ")) {
        open = new ArrayList<>();
        all.put(line.substring(4), open);
      } else if (row.matches()) {
        open.add(new Line(row.group(1), !row.group(2).isEmpty(), row.group(3), row.group(4)));
      }
    }
    return all;
  }

  static List<String> patterns(String page) {
    return BLOCK.matcher(page).results().map(m -> m.group(1)).toList();
  }

  /** The billets to start from: three layers, many layers, a mosaic. */
  public List<String> patterns() {
    return patterns;
  }

  /** The form of the whole file. */
  public FormSheet file() {
    return file;
  }

  /** The form of a step. */
  public FormSheet step(Step.Kind kind) {
    return steps.get(kind);
  }

  /** The kind of a step that is written, if it is one. */
  public static Optional<Step.Kind> kind(JsonValue step) {
    if (!(step instanceof ObjectValue object)
        || !object.members().containsKey("do")
        || !(object.members().get("do").value() instanceof TextValue text)) {
      return Optional.empty();
    }
    String word = TradeWords.plain(text.text()).toUpperCase(Locale.ROOT);
    return List.of(Step.Kind.values()).stream().filter(k -> k.name().equals(word)).findFirst();
  }

  /** The key that a way through a file leads to, if a form has it. */
  public Optional<Found> find(JsonValue root, JsonPath path) {
    FormKey.Way way = new FormKey.Inside(file, false);
    FormKey key = null;
    JsonValue value = root;
    for (JsonPath.Part part : path.parts()) {
      value = value == null ? null : child(value, part);
      if (part instanceof JsonPath.Key name && way instanceof FormKey.Inside inside) {
        Optional<FormKey> known = inside.sheet().key(name.name());
        if (known.isEmpty()) {
          return Optional.empty();
        }
        key = known.get();
        way = key.way();
      } else if (part instanceof JsonPath.Item && way instanceof FormKey.Each each) {
        way = each.item();
      } else if (part instanceof JsonPath.Item && way instanceof FormKey.Steps && value != null) {
        Optional<Step.Kind> kind = kind(value);
        if (kind.isEmpty()) {
          return Optional.empty();
        }
        way = new FormKey.Inside(step(kind.get()), false);
      } else {
        return Optional.empty();
      }
    }
    return key == null ? Optional.empty() : Optional.of(new Found(key, way));
  }

  private static JsonValue child(JsonValue value, JsonPath.Part part) {
    if (part instanceof JsonPath.Key key && value instanceof ObjectValue object) {
      JsonValue.Member member = object.members().get(key.name());
      return member == null ? null : member.value();
    }
    return part instanceof JsonPath.Item item
            && value instanceof ListValue list
            && item.index() < list.items().size()
        ? list.items().get(item.index())
        : null;
  }

  private FormSheet sheet(String title, Form<?> form) {
    List<FormKey> keys = new ArrayList<>();
    for (Key<?> key : form.keys()) {
      keys.add(
          new FormKey(
              key.name(),
              key.absent().isEmpty(),
              key.example().us(),
              key.example().metric(),
              meaning(title, key.name()),
              way(key.values())));
    }
    return new FormSheet(title, keys);
  }

  private String meaning(String title, String key) {
    return List.of(title, EVERY_STEP).stream()
        .flatMap(t -> tables.getOrDefault(t, List.of()).stream())
        .filter(l -> l.key().equals(key))
        .findFirst()
        .map(l -> l.meaning().replace("`", ""))
        .orElse("");
  }

  private FormKey.Way way(Reader<?> reader) {
    if (reader instanceof Choice<?> choice) {
      return new FormKey.OneOf(choice.words());
    }
    if (reader instanceof ListOf<?> list) {
      return new FormKey.Each(way(list.item()));
    }
    if (reader instanceof OneOrMore<?> list) {
      return way(list.list());
    }
    if (reader instanceof Form<?> form) {
      return inside(form, false);
    }
    if (reader == ShopReader.KILN_OR_NONE) {
      return inside(ShopReader.KILN, true);
    }
    if (reader == ShopReader.QUENCHANT || reader == ShopReader.BATH_KIND) {
      return new FormKey.OneOf(quenchants.all().stream().map(Quenchant::id).toList());
    }
    if (reader == StackReader.THICKNESSES) {
      return new FormKey.Each(new FormKey.Amount());
    }
    if (reader == SteelReader.STEEL) {
      return new FormKey.SteelName();
    }
    if (reader == StepReader.STEPS) {
      return new FormKey.Steps();
    }
    return reader == Values.TEXT ? new FormKey.Prose() : new FormKey.Amount();
  }

  /** What was done has no table of its own where it has the keys of a step. */
  private FormKey.Way inside(Form<?> form, boolean orNone) {
    return forms.entrySet().stream()
        .filter(e -> e.getValue() == form)
        .findFirst()
        .<FormKey.Way>map(e -> new FormKey.Inside(sheet(e.getKey(), form), orNone))
        .orElseGet(FormKey.Other::new);
  }
}
