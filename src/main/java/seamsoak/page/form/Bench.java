package seamsoak.page.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import seamsoak.billet.Step;
import seamsoak.billet.file.FormBook;
import seamsoak.billet.file.FormKey;
import seamsoak.billet.file.FormSheet;
import seamsoak.data.JsonPath;
import seamsoak.data.JsonValue;
import seamsoak.data.JsonValue.ObjectValue;
import seamsoak.data.Mistake;
import seamsoak.steel.Steel;
import seamsoak.unit.UnitSystem;
import seamsoak.words.PageWords;
import seamsoak.words.Sentence;

/**
 * A billet's text as cards of fields, each with what is wrong with it: the form of each object as
 * the reader declares it, filled with what stands in the text.
 */
public final class Bench {
  /** What the bench does not show: the past has its own place, the others decide nothing here. */
  private static final Set<String> NOT_HERE = Set.of("done", "seen", "curves", "visible", "do");

  private static final String STEELS = "steels";

  private final Editing billet;
  private final Kit kit;
  private final UnitSystem units;

  private final Mendings mendings;

  /**
   * The whole bench.
   *
   * @param units of bare numbers, if the file names them
   * @param general name, units and what is looked at
   * @param stack its sizes
   * @param steels its steels with their thicknesses, two fields each
   * @param steps in order
   * @param rest blade, soak and shop
   * @param faults all of them, in order
   * @param others those that no card tells
   */
  public record View(
      Optional<UnitSystem> units,
      Card general,
      Card stack,
      List<Card> steels,
      List<StepCard> steps,
      List<Card> rest,
      List<Mendings.Link> faults,
      List<String> others) {}

  /**
   * A step.
   *
   * @param kind empty where it is none that is known
   */
  public record StepCard(int number, String kind, Card card, List<Card> heats, boolean done) {}

  private Bench(Editing billet, List<Mistake> mistakes, Kit kit) {
    this.billet = billet;
    this.kit = kit;
    this.mendings = new Mendings(mistakes);
    this.units =
        billet.value(JsonPath.of("units")).equals("metric") ? UnitSystem.METRIC : UnitSystem.US;
  }

  public static View of(Editing billet, Proof proof, Kit kit) {
    return new Bench(billet, proof.mistakes(), kit).view();
  }

  /** The parts of a text that are the shop's and not a billet's. */
  public record ShopView(
      Card general, List<Card> rest, List<Mendings.Link> faults, List<String> others) {}

  public static ShopView shop(Editing shop, List<Mistake> mistakes, Kit kit) {
    Bench bench = new Bench(shop, mistakes, kit);
    FormSheet file = shop.book().file();
    FormSheet units = new FormSheet(file.title(), file.key("units").stream().toList());
    Card general = bench.card(JsonPath.ROOT, "Shop", units, true);
    List<Card> rest = bench.rest(file, List.of("equipment", "soak"));
    return new ShopView(general, rest, bench.mendings.told(), bench.mendings.others(false));
  }

  private List<Card> rest(FormSheet file, List<String> names) {
    List<Card> rest = new ArrayList<>();
    for (String name : names) {
      JsonPath path = JsonPath.of(name);
      rest.add(card(path, Sentence.capital(name), file.inside(name), true));
    }
    rest.add(quenchants(file));
    return rest;
  }

  private View view() {
    FormSheet file = billet.book().file();
    boolean named = !billet.value(JsonPath.of("units")).isEmpty();
    Card general = card(JsonPath.ROOT, "Billet", named ? file.without("units") : file, false);
    // fields tell their mistakes before the cards that they lie in
    List<Card> steels = steels(file.inside("stack"));
    Card stack =
        card(Editing.STACK, "Stack", file.inside("stack").without(STEELS, "thickness"), false);
    List<StepCard> steps = new ArrayList<>();
    for (int i = 0; i < billet.size(Editing.STEPS); i++) {
      steps.add(step(i));
    }
    List<Card> rest = rest(file, List.of("blade", "soak", "equipment"));
    return new View(
        named ? Optional.of(units) : Optional.empty(),
        general,
        stack,
        steels,
        steps,
        rest,
        mendings.told(),
        mendings.others(steps.isEmpty()));
  }

  /** A row for each steel: which, and how thick each of its pieces is. */
  private List<Card> steels(FormSheet stack) {
    List<Card> rows = new ArrayList<>();
    FormKey steel = stack.key(STEELS).orElseThrow();
    FormKey thickness = stack.key("thickness").orElseThrow();
    for (int i = 0; i < Math.max(1, billet.size(Editing.STEELS)); i++) {
      JsonPath at = Editing.STEELS.item(i);
      rows.add(
          new Card(
              at.toString(),
              "Steel " + (i + 1),
              List.of(
                  field(at, "steel", steel, new FormKey.SteelName()),
                  field(Editing.THICKNESS.item(i), "thickness", thickness, new FormKey.Amount())),
              List.of(),
              List.of(),
              false,
              List.of()));
    }
    return rows;
  }

  private StepCard step(int index) {
    JsonPath path = Editing.STEPS.item(index);
    JsonValue value = billet.editor().at(path).orElseThrow();
    Optional<Step.Kind> kind = FormBook.kind(value);
    List<Card> heats = new ArrayList<>();
    FormSheet sheet =
        kind.map(billet.book()::step).orElseGet(() -> new FormSheet("step", List.of()));
    if (sheet.key("heats").isPresent()) {
      FormSheet heat = sheet.each("heats");
      JsonPath all = path.key("heats");
      for (int j = 0; j < billet.size(all); j++) {
        heats.add(card(all.item(j), "Heat " + (j + 1), heat, false));
      }
    }
    String word = kind.map(Step.Kind::word).orElse("");
    Card card = card(path, word, sheet.without("heats"), false);
    boolean done =
        value instanceof ObjectValue o && (o.members().containsKey("done") || anyHeatDone(path));
    return new StepCard(index + 1, word, card, heats, done);
  }

  private boolean anyHeatDone(JsonPath step) {
    JsonPath heats = step.key("heats");
    for (int j = 0; j < billet.size(heats); j++) {
      if (billet.size(heats.item(j).key("done")) > 0) {
        return true;
      }
    }
    return false;
  }

  private Card quenchants(FormSheet file) {
    FormSheet each = file.each("quenchants");
    JsonPath all = JsonPath.of("quenchants");
    List<Card> rows = new ArrayList<>();
    for (int i = 0; i < billet.size(all); i++) {
      rows.add(card(all.item(i), "Quenchant " + (i + 1), each, false));
    }
    return new Card(all.toString(), "Quenchants", List.of(), List.of(), rows, true, faultsAt(all));
  }

  private Card card(JsonPath path, String title, FormSheet sheet, boolean folded) {
    List<Field> first = new ArrayList<>();
    List<Field> more = new ArrayList<>();
    List<Card> inside = new ArrayList<>();
    for (FormKey key : sheet.keys()) {
      JsonPath at = path.key(key.name());
      if (NOT_HERE.contains(key.name())) {
        continue;
      }
      if (key.way() instanceof FormKey.Inside object) {
        if (object.orNone()) {
          FormKey.Way word = new FormKey.OneOf(List.of(PageWords.NONE));
          first.add(field(at, key.name(), key, word));
        }
        if (!path.parts().isEmpty()) {
          inside.add(card(at, key.name(), object.sheet(), true));
        }
      } else if (!(key.way() instanceof FormKey.Each) && !(key.way() instanceof FormKey.Steps)) {
        boolean always = key.needed() || isFirst(key.name()) || folded;
        (always ? first : more).add(field(at, key.name(), key, key.way()));
      }
    }
    return new Card(path.toString(), title, first, more, inside, folded, faultsAt(path));
  }

  /** What may be left out and is often wanted all the same. */
  private static boolean isFirst(String key) {
    return Set.of("name", "times", "turn", "count").contains(key);
  }

  private Field field(JsonPath at, String label, FormKey key, FormKey.Way way) {
    String path = at.toString();
    String value = billet.value(at);
    boolean missing = value.isEmpty() && key.needed();
    List<String> faults =
        mendings.at(
            path,
            where(at.parent()) + ", " + label,
            missing ? Optional.of(PageWords.needed(key.example(units))) : Optional.empty());
    return new Field(
        path,
        label,
        value,
        key.needed(),
        help(key, way),
        choices(way, value),
        way instanceof FormKey.SteelName ? STEELS : "",
        way instanceof FormKey.SteelName ? analysis(value) : "",
        faults);
  }

  private String help(FormKey key, FormKey.Way way) {
    String meaning = Sentence.ended(Sentence.capital(key.meaning()));
    if (way instanceof FormKey.OneOf) {
      return meaning;
    }
    String example = key.example(units);
    boolean plain = !example.startsWith("[") && !example.startsWith("{");
    return plain ? PageWords.help(meaning, example) : meaning;
  }

  /** What stands there already may be chosen too, whatever it is. */
  private static List<String> choices(FormKey.Way way, String value) {
    if (!(way instanceof FormKey.OneOf of)) {
      return List.of();
    }
    List<String> all = new ArrayList<>(List.of(""));
    all.addAll(of.words());
    if (!all.contains(value)) {
      all.add(value);
    }
    return all;
  }

  private String analysis(String name) {
    try {
      Optional<Steel> steel = name.isBlank() ? Optional.empty() : kit.steels().find(name);
      return steel.map(s -> s.designation() + ": " + s.analysis().format()).orElse("");
    } catch (IllegalArgumentException none) {
      return "";
    }
  }

  private List<Card.Told> faultsAt(JsonPath path) {
    return mendings.within(path, where(path), this::isThere);
  }

  /** What a smith calls a part of the billet. */
  private String where(JsonPath path) {
    String first = path.toString().replaceFirst("[.\\[].*", "");
    if (!first.equals("steps") || path.parts().size() < 2) {
      return first.isEmpty() ? "Billet" : Sentence.capital(first);
    }
    JsonPath step = new JsonPath(path.parts().subList(0, 2));
    int number = ((JsonPath.Item) step.last()).index() + 1;
    return PageWords.step(number, billet.value(step.key("do")));
  }

  private boolean isThere(String field) {
    try {
      return !field.endsWith(".do") && billet.editor().at(JsonPath.of(field)).isPresent();
    } catch (IllegalArgumentException noPath) {
      return false;
    }
  }
}
