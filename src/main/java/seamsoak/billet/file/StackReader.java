package seamsoak.billet.file;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Size;
import seamsoak.billet.Stack;
import seamsoak.data.Faults;
import seamsoak.data.JsonValue.ListValue;
import seamsoak.steel.Steel;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/** Reads the pieces before the first weld. */
final class StackReader {
  private static final int MOST_LAYERS = 1000;
  private static final int MOST_STEELS = 20;
  private static final ListOf<Length> EACH = new ListOf<>(MOST_STEELS, Quantities::size);

  /** One for each steel, or one for all. */
  static final Reader<List<Length>> THICKNESSES = StackReader::thicknesses;

  private static final Key<Integer> LAYERS =
      Key.required("layers", "13", Values.count(1, MOST_LAYERS));
  private static final Key<List<Steel>> STEELS =
      Key.required("steels", "[\"1084\", \"75Ni8\"]", new ListOf<>(MOST_STEELS, SteelReader.STEEL));
  private static final Key<List<Length>> THICKNESS =
      Key.required("thickness", new Key.Example("\"1 in\"", "\"25 mm\""), StackReader.THICKNESSES);
  private static final Key<Length> WIDTH =
      Key.required("width", new Key.Example("\"1-3/8 in\"", "\"35 mm\""), Quantities::size);
  private static final Key<Length> LENGTH =
      Key.required("length", new Key.Example("\"6 in\"", "\"150 mm\""), Quantities::size);
  private static final Key<Optional<Length>> SKIN =
      Key.optional("skin", new Key.Example("\"0.004 in\"", "\"0.1 mm\""), Quantities::depth);
  static final Form<Stack> STACK =
      new Form<>(List.of(LAYERS, STEELS, THICKNESS, WIDTH, LENGTH, SKIN), StackReader::stack);

  private StackReader() {}

  private static List<Length> thicknesses(Entry entry) {
    return entry.value() instanceof ListValue ? EACH.read(entry) : List.of(Quantities.size(entry));
  }

  private static Stack stack(Fields f) {
    int layers = f.get(LAYERS);
    List<Steel> steels = f.get(STEELS);
    Faults faults = new Faults();
    if (steels.size() > layers) {
      faults.add(
          f.at(STEELS)
              .fault(
                  layers + " layers cannot hold " + steels.size() + " steels",
                  "give at least as many layers as steels"));
    }
    List<Length> given = f.get(THICKNESS);
    boolean each = f.at(THICKNESS).value() instanceof ListValue;
    if (each && given.size() != steels.size()) {
      faults.add(
          f.at(THICKNESS)
              .fault(
                  "thickness has " + given.size() + " entries for " + steels.size() + " steels",
                  "give one for each steel, or a single text for all"));
    }
    faults.throwAny();
    Stack stack =
        new Stack(
            layers,
            steels,
            each ? given : Collections.nCopies(steels.size(), given.get(0)),
            f.get(WIDTH),
            f.get(LENGTH),
            f.object()
                .reading()
                .units()
                .orElseGet(() -> UnitSystem.ofLength(Values.text(f.at(WIDTH)))),
            f.get(SKIN),
            f.object().place());
    requirePossible(stack, f);
    return stack;
  }

  private static void requirePossible(Stack stack, Fields f) {
    Faults faults = new Faults();
    if (stack.thickness().metres() > Size.THICKEST_METRES) {
      faults.add(
          f.at(THICKNESS)
              .fault(
                  "the stack is " + stack.thickness().format(stack.units()) + " thick",
                  new Length(Size.THICKEST_METRES).format(stack.units()) + " is the most"));
    }
    double thinnest = stack.thicknesses().stream().mapToDouble(Length::metres).min().orElseThrow();
    if (2 * stack.skinTaken().metres() >= thinnest) {
      faults.add(
          f.at(SKIN)
              .fault(
                  "the skins of both faces meet in the thinnest layer",
                  "skin is the depth on one face"));
    }
    faults.throwAny();
  }
}
