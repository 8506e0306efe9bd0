package seamsoak.billet.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.billet.Bath;
import seamsoak.billet.Billet;
import seamsoak.billet.Blade;
import seamsoak.billet.Equipment;
import seamsoak.billet.Exposure;
import seamsoak.billet.Face;
import seamsoak.billet.HeatDone;
import seamsoak.billet.LoggedCurve;
import seamsoak.billet.OldWord;
import seamsoak.billet.SoakWish;
import seamsoak.billet.Stack;
import seamsoak.billet.Step;
import seamsoak.billet.Visible;
import seamsoak.data.Fault;
import seamsoak.data.Faults;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.TextFile;
import seamsoak.steel.Steel;
import seamsoak.unit.Length;
import seamsoak.unit.Percent;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/** Reads a billet file, or says where and why it cannot be understood: all of it at once. */
public final class BilletReader {
  private static final int MOST_BATHS = 20;

  private static final Key<Optional<TimeSpan>> MOST =
      Key.optional("most", "\"60 min\"", Quantities::time);
  private static final Key<Optional<Exposure>> OUTSIDE =
      Key.optional("outside", "\"covered\"", Values.choice(Exposure.class));
  private static final Key<Optional<Temperature>> HIGHEST =
      Key.optional("highest", new Key.Example("\"2100 F\"", "\"1150 C\""), Quantities::temperature);
  static final Form<SoakWish> SOAK_WISH =
      new Form<>(
          List.of(MOST, OUTSIDE, HIGHEST),
          f -> new SoakWish(f.get(MOST), f.get(OUTSIDE), f.get(HIGHEST)));

  private static final Key<Optional<Percent>> DIP =
      Key.optional("dip", "\"0.1 %\"", Quantities::dip);
  private static final Key<Optional<Length>> LINE_WIDTH =
      Key.optional("width", new Key.Example("\"0.004 in\"", "\"0.1 mm\""), Quantities::size);
  static final Form<Visible> WHAT_SHOWS =
      new Form<>(List.of(DIP, LINE_WIDTH), f -> new Visible(f.get(DIP), f.get(LINE_WIDTH)));

  private static final Key<Optional<UnitSystem>> UNITS =
      Key.optional("units", "\"us\"", Values.choice(List.of(UnitSystem.US, UnitSystem.METRIC)));
  private static final Key<Optional<String>> NAME =
      Key.optional("name", "\"San-mai, 1/8 in\"", Values.TEXT);
  private static final Key<Stack> STACK =
      Key.required("stack", "{ \"layers\": 13, \"steels\": [...], ... }", StackReader.STACK);
  private static final Key<List<Step>> STEPS =
      Key.required("steps", "[{ \"do\": \"weld\", ... }]", StepReader.STEPS);

  /** They are read before all else, since heats name them. */
  private static final Key<Optional<Entry>> CURVES =
      Key.optional("curves", "{ \"kiln 1\": { \"minutes\": [...], ... } }", entry -> entry);

  private static final Key<SoakWish> SOAK =
      Key.or(
          new SoakWish(Optional.empty(), Optional.empty(), Optional.empty()),
          "soak",
          "{ \"most\": \"60 min\" }",
          SOAK_WISH);
  private static final Key<Blade> BLADE =
      Key.or(Blade.UNSTATED, "blade", "{ \"hardness\": \"60 HRC\" }", ShopReader.BLADE);
  private static final Key<Equipment> EQUIPMENT =
      Key.or(Equipment.UNSTATED, "equipment", "{ \"forge\": \"gas\" }", ShopReader.EQUIPMENT);
  private static final Key<List<Bath>> QUENCHANTS =
      Key.or(
          List.of(),
          "quenchants",
          "[{ \"kind\": \"oil-fast\" }]",
          new ListOf<>(MOST_BATHS, "quenchant", ShopReader.BATH));
  private static final Key<Optional<Face>> SHOWN =
      Key.optional("shown", "\"side\"", Values.choice(Face.class));
  private static final Key<Visible> VISIBLE =
      Key.or(
          new Visible(Optional.empty(), Optional.empty()),
          "visible",
          "{ \"dip\": \"0.1 %\" }",
          WHAT_SHOWS);
  private static final Key<Optional<Percent>> COVERED =
      Key.optional("covered", "\"50 %\"", Quantities::share);

  /** All that a file may hold. */
  static final Form<Billet> BILLET =
      new Form<>(
          List.of(
              NAME,
              UNITS,
              STACK,
              STEPS,
              CURVES,
              SOAK,
              BLADE,
              EQUIPMENT,
              QUENCHANTS,
              SHOWN,
              VISIBLE,
              COVERED),
          BilletReader::billet);

  private BilletReader() {}

  public static Billet read(Path file, Names names) {
    return read(file, TextFile.read(file.toString(), file), names);
  }

  /** Reads text that was read from a file of that name. */
  public static Billet read(Path file, String text, Names names) {
    Faults faults = new Faults();
    JsonValue root = JsonTree.parse(file.toString(), text, faults);
    Entry top = new Entry(root, "the billet", "", new Reading(names));
    Optional<Billet> billet = faults.tried(() -> BILLET.read(withCurves(inItsUnits(top), faults)));
    faults.throwAny();
    return billet.orElseThrow();
  }

  /** Curves are read before the heats that name them. */
  private static Entry withCurves(Entry top, Faults faults) {
    return top.value() instanceof JsonValue.ObjectValue
        ? top.member(CURVES.name())
            .map(curves -> top.with(top.reading().with(CurveReader.curves(curves, faults))))
            .orElse(top)
        : top;
  }

  /** Units are told once, wherever they stand; so they are looked up before all is read. */
  private static Entry inItsUnits(Entry top) {
    Entry meant = BILLET.meant(top, new Faults());
    return top.with(top.reading().in(new Faults().tried(() -> UNITS.in(meant))));
  }

  private static Billet billet(Fields f) {
    Stack stack = f.get(STACK);
    f.get(BLADE)
        .cuts()
        .filter(edge -> !stack.steels().contains(edge))
        .ifPresent(
            edge -> {
              throw notInStack(f, edge);
            });
    f.get(CURVES)
        .flatMap(curves -> CurveReader.unused(curves, used(f.get(STEPS))))
        .ifPresent(
            unused -> {
              throw unused;
            });
    return new Billet(
        f.get(NAME).orElseGet(() -> nameOf(f.object().place().file())),
        f.get(UNITS),
        stack,
        f.get(STEPS),
        f.get(SOAK),
        f.get(BLADE),
        f.get(EQUIPMENT),
        f.get(QUENCHANTS),
        f.get(SHOWN),
        f.get(VISIBLE),
        f.get(COVERED),
        f.object().reading().oldWords().stream().distinct().sorted(OldWord.AS_WRITTEN).toList());
  }

  private static List<LoggedCurve> used(List<Step> steps) {
    return steps.stream()
        .flatMap(s -> s.heats().stream())
        .flatMap(h -> h.done().stream())
        .map(HeatDone::how)
        .flatMap(how -> how instanceof HeatDone.Logged l ? Stream.of(l.curve()) : Stream.empty())
        .toList();
  }

  private static String nameOf(String file) {
    return Path.of(file).getFileName().toString().replaceFirst("\\.json$", "");
  }

  private static Fault notInStack(Fields f, Steel edge) {
    List<String> there = f.get(STACK).steels().stream().map(Steel::id).distinct().sorted().toList();
    Entry named = ShopReader.cutting(f.at(BLADE)).orElseThrow();
    return named.fault(
        named.name() + " is '" + edge.id() + "', which is not in the stack",
        "it is one of " + String.join(", ", there));
  }
}
