package seamsoak.billet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import seamsoak.data.Fault;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/** Reads a billet file, or says in one sentence where and why it cannot be understood. */
public final class BilletReader {
  private static final int MOST_LAYERS = 1000;
  private static final int MOST_STEELS = 20;
  private static final int MOST_BATHS = 20;
  private static final int MOST_STEPS = 500;
  private static final int MOST_HEATS = 500;

  private final SteelReader steels;

  private BilletReader(SteelReader steels) {
    this.steels = steels;
  }

  /** Reads a file whose steels stand in the table. */
  public static Billet read(Path file, SteelTable table) {
    return read(file, table::find, table::nearest);
  }

  /** Reads the text of a file whose steels stand in the table. */
  public static Billet read(Path file, String text, SteelTable table) {
    return read(file, JsonTree.parse(file.toString(), text), table::find, table::nearest);
  }

  /**
   * Reads a file.
   *
   * @param find the steel of an id, an alias or a written analysis
   * @param nearest the known name nearest to a misspelt one
   */
  public static Billet read(
      Path file,
      Function<String, Optional<Steel>> find,
      Function<String, Optional<String>> nearest) {
    return read(file, JsonTree.read(file.toString(), file), find, nearest);
  }

  private static Billet read(
      Path file,
      JsonValue root,
      Function<String, Optional<Steel>> find,
      Function<String, Optional<String>> nearest) {
    String fileName = file.getFileName().toString().replaceFirst("\\.json$", "");
    return new BilletReader(new SteelReader(find, nearest, new ArrayList<>()))
        .billet(root, fileName);
  }

  private Billet billet(JsonValue root, String fileName) {
    Fields f =
        Fields.of(
            root,
            "the billet",
            List.of(
                "name",
                "stack",
                "steps",
                "soak",
                "blade",
                "equipment",
                "quenchants",
                "shown",
                "visible",
                "covered"));
    Stack stack = f.required("stack", this::stack);
    ShopReader shop = new ShopReader(steels, stack);
    return new Billet(
        f.optional("name", Values::text).orElse(fileName),
        stack,
        f.required("steps", this::steps),
        f.optional("soak", BilletReader::soak)
            .orElse(new SoakWish(Optional.empty(), Optional.empty(), Optional.empty())),
        f.optional("blade", shop::blade).orElse(Blade.UNSTATED),
        f.optional("equipment", ShopReader::equipment).orElse(Equipment.UNSTATED),
        f.optional("quenchants", Values.list(MOST_BATHS, ShopReader::bath)).orElse(List.of()),
        f.optional("shown", Values.choice(Face.class)),
        f.optional("visible", BilletReader::visible)
            .orElse(new Visible(Optional.empty(), Optional.empty())),
        f.optional("covered", Values::share));
  }

  private List<Step> steps(JsonValue value, String name) {
    List<Step> steps = Values.list(MOST_STEPS, StepReader.inOrder(steels)).read(value, name);
    int heats = 0;
    for (Step step : steps) {
      heats += step.heats().stream().mapToInt(Heat::times).sum();
      if (heats > MOST_HEATS) {
        throw new Fault(
            step.place(),
            step.title() + " brings the heats to " + heats,
            MOST_HEATS + " is the most for a billet");
      }
    }
    return steps;
  }

  private Stack stack(JsonValue value, String name) {
    Fields f =
        Fields.of(
            value,
            "the stack",
            List.of("layers", "steels", "thickness", "width", "length", "skin"));
    int layers = f.required("layers", Values.count(1, MOST_LAYERS));
    List<Steel> named = f.required("steels", Values.list(MOST_STEELS, steels));
    if (named.size() > layers) {
      throw new Fault(
          f.place("steels"),
          layers + " layers cannot hold " + named.size() + " steels",
          "give at least as many layers as steels");
    }
    List<Length> thicknesses =
        f.required("thickness", (v, key) -> thicknesses(v, key, named.size()));
    Stack stack =
        new Stack(
            layers,
            named,
            thicknesses,
            f.required("width", Values::size),
            f.required("length", Values::size),
            f.required("width", (v, key) -> UnitSystem.ofLength(Values.text(v, key))),
            f.optional("skin", Values::depth),
            f.place());
    if (stack.thickness().metres() > Size.THICKEST_METRES) {
      throw new Fault(
          f.place("thickness"),
          "the stack is " + stack.thickness().format(stack.units()) + " thick",
          new Length(Size.THICKEST_METRES).format(stack.units()) + " is the most");
    }
    double thinnest = thicknesses.stream().mapToDouble(Length::metres).min().orElseThrow();
    if (2 * stack.skinTaken().metres() >= thinnest) {
      throw new Fault(
          f.place("skin"),
          "the skins of both faces meet in the thinnest layer",
          "skin is the depth on one face");
    }
    return stack;
  }

  /** One for each steel, or one for all. */
  private static List<Length> thicknesses(JsonValue value, String name, int steels) {
    if (!(value instanceof JsonValue.ListValue)) {
      Length all = Values.size(value, name);
      return Collections.nCopies(steels, all);
    }
    List<Length> each = Values.list(MOST_STEELS, Values::size).read(value, name);
    if (each.size() != steels) {
      throw new Fault(
          value.place(),
          name + " has " + each.size() + " entries for " + steels + " steels",
          "give one for each steel, or a single text for all");
    }
    return each;
  }

  private static SoakWish soak(JsonValue value, String name) {
    Fields f = Fields.of(value, name, List.of("most", "outside", "highest"));
    return new SoakWish(
        f.optional("most", Values::time),
        f.optional("outside", Values.choice(Exposure.class)),
        f.optional("highest", Values::temperature));
  }

  private static Visible visible(JsonValue value, String name) {
    Fields f = Fields.of(value, name, List.of("dip", "width"));
    return new Visible(f.optional("dip", Values::dip), f.optional("width", Values::size));
  }
}
