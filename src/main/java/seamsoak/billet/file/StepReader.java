package seamsoak.billet.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import seamsoak.billet.Bath;
import seamsoak.billet.Can;
import seamsoak.billet.Coating;
import seamsoak.billet.Cooling;
import seamsoak.billet.Exposure;
import seamsoak.billet.Heat;
import seamsoak.billet.Jacket;
import seamsoak.billet.Mark;
import seamsoak.billet.Seen;
import seamsoak.billet.Step;
import seamsoak.billet.StepDone;
import seamsoak.billet.Turn;
import seamsoak.billet.Twist;
import seamsoak.data.Fault;
import seamsoak.data.Faults;
import seamsoak.steel.Steel;
import seamsoak.unit.Angle;
import seamsoak.unit.Length;

/** Reads the steps of a billet in their order. */
final class StepReader {
  private static final int MOST_STEPS = 500;
  private static final int MOST_HEATS = 500;
  private static final int MOST_PIECES = 1000;

  private static final Key<Optional<Can.Inside>> INSIDE =
      Key.optional("inside", "\"baked dry\"", Values.choice(Can.Inside.class));
  private static final Key<Optional<Can.Vent>> VENT =
      Key.optional("vent", "\"hole\"", Values.choice(Can.Vent.class));
  static final Form<Can> CAN =
      new Form<>(List.of(INSIDE, VENT), f -> new Can(f.get(INSIDE), f.get(VENT)));

  private static final Key<Steel> STEEL = Key.required("steel", "\"1008\"", SteelReader.STEEL);
  private static final Key<Length> THICKNESS =
      Key.required("thickness", new Key.Example("\"1 in\"", "\"25 mm\""), Quantities::size);
  private static final Key<Optional<Coating>> COATING =
      Key.optional("coating", "\"none\"", Values.choice(Coating.class));
  static final Form<Jacket> JACKET =
      new Form<>(
          List.of(STEEL, THICKNESS, COATING),
          f -> new Jacket(f.get(STEEL), f.get(THICKNESS), f.get(COATING)));

  private static final Key<Step.Kind> DO =
      Key.required("do", "\"weld\"", Values.choice(Step.Kind.class));
  private static final Key<List<Seen>> SEEN =
      Key.or(List.of(), "seen", "{ \"where\": \"restack\", \"line\": \"none\" }", SeenReader.LOOKS);
  private static final Key<Optional<String>> NOTE =
      Key.optional("note", "\"brushed twice\"", Values.TEXT);

  private static final Key<Optional<Exposure>> OUTSIDE =
      Key.optional("outside", "\"covered\"", Values.choice(Exposure.class));
  private static final Key<Optional<Exposure>> FACES =
      Key.optional("faces", "\"open\"", Values.choice(Exposure.class));
  private static final Key<Optional<Can>> IN_CAN =
      Key.optional("can", "{ \"inside\": \"baked dry\", \"vent\": \"hole\" }", CAN);
  private static final Key<Length> WIDTH =
      Key.required("width", new Key.Example("\"1-3/8 in\"", "\"35 mm\""), Quantities::size);
  private static final Key<Optional<Length>> ANY_WIDTH =
      Key.optional("width", new Key.Example("\"1-3/8 in\"", "\"35 mm\""), Quantities::size);
  private static final Key<Length> DEPTH =
      Key.required("depth", new Key.Example("\"0.015 in\"", "\"0.3 mm\""), Quantities::size);
  private static final Key<Optional<Length>> ANY_DEPTH =
      Key.optional("depth", new Key.Example("\"0.015 in\"", "\"0.3 mm\""), Quantities::depth);
  private static final Key<Integer> ACROSS =
      Key.required("across", "1", Values.count(1, MOST_PIECES));
  private static final Key<Integer> HIGH = Key.required("high", "3", Values.count(1, MOST_PIECES));
  private static final Key<Optional<Turn>> TURN =
      Key.optional("turn", "\"alternate\"", Values.choice(Turn.class));
  private static final Key<Optional<Length>> KERF =
      Key.optional("kerf", new Key.Example("\"1/16 in\"", "\"2 mm\""), Quantities::depth);
  private static final Key<Angle> ANGLE = Key.required("angle", "\"45 deg\"", Quantities::cut);
  private static final Key<Length> SLICE =
      Key.required("slice", new Key.Example("\"5/8 in\"", "\"15 mm\""), Quantities::size);
  private static final Key<Optional<Length>> GRIND =
      Key.optional("grind", new Key.Example("\"0.015 in\"", "\"0.3 mm\""), Quantities::depth);
  private static final Key<Optional<Integer>> COUNT =
      Key.optional("count", "8", Values.count(2, MOST_PIECES));
  private static final Key<Optional<Jacket>> IN_JACKET =
      Key.optional(
          "jacket",
          new Key.Example(
              "{ \"steel\": \"1008\", \"thickness\": \"16 ga\" }",
              "{ \"steel\": \"1008\", \"thickness\": \"1.2 mm\" }"),
          JACKET);
  private static final Key<Cooling> IN =
      Key.required("in", "\"air\"", Values.choice(Cooling.class));

  private static final Key<Double> TURNS = Key.required("turns", "6", Values.number(0.01, 1000));
  private static final Key<Length> OVER =
      Key.required("over", new Key.Example("\"10 in\"", "\"250 mm\""), Quantities::size);
  private static final Key<Optional<Twist.Way>> WAY =
      Key.optional("way", "\"right\"", Values.choice(Twist.Way.class));
  private static final Key<Bath> BATH = Key.required("in", "\"oil-fast\"", ShopReader.BATH_KIND);

  /** The whole list. */
  static final Reader<List<Step>> STEPS = StepReader::steps;

  private StepReader() {}

  /** What a step of a kind may hold. */
  static Form<Step> form(Step.Kind kind) {
    Key<List<Heat>> heats = HeatReader.heats(kind);
    return switch (kind) {
      case WELD ->
          form(
              List.of(heats, FACES, OUTSIDE, IN_CAN),
              (f, mark) ->
                  new Step.Weld(mark, f.get(heats), f.get(FACES), f.get(OUTSIDE), f.get(IN_CAN)));
      case DRAW ->
          form(
              List.of(THICKNESS, WIDTH, heats, OUTSIDE),
              (f, mark) ->
                  new Step.Draw(
                      mark, f.get(THICKNESS), f.get(WIDTH), f.get(heats), f.get(OUTSIDE)));
      case PRESS ->
          form(
              List.of(THICKNESS, ANY_WIDTH, heats, OUTSIDE),
              (f, mark) ->
                  new Step.Press(
                      mark, f.get(THICKNESS), f.get(ANY_WIDTH), f.get(heats), f.get(OUTSIDE)));
      case ROLL ->
          form(
              List.of(THICKNESS, heats, OUTSIDE),
              (f, mark) -> new Step.Roll(mark, f.get(THICKNESS), f.get(heats), f.get(OUTSIDE)));
      case GRIND -> form(List.of(DEPTH), (f, mark) -> new Step.Grind(mark, f.get(DEPTH)));
      case RESTACK -> form(List.of(ACROSS, HIGH, TURN, KERF), StepReader::restack);
      case TILE -> form(List.of(ANGLE, SLICE, GRIND, KERF, COUNT, IN_JACKET), StepReader::tile);
      case UNJACKET ->
          form(List.of(ANY_DEPTH), (f, mark) -> new Step.Unjacket(mark, f.get(ANY_DEPTH)));
      case TWIST ->
          form(
              List.of(TURNS, OVER, WAY, heats, OUTSIDE),
              (f, mark) ->
                  new Twist(
                      mark, f.get(TURNS), f.get(OVER), f.get(WAY), f.get(heats), f.get(OUTSIDE)));
      case SOAK, ANNEAL, NORMALIZE, REFINE, RELIEVE, TEMPER ->
          form(
              List.of(heats, OUTSIDE),
              (f, mark) -> new Step.Treat(kind, mark, f.get(heats), f.get(OUTSIDE)));
      case HARDEN ->
          form(
              List.of(heats, BATH, OUTSIDE),
              (f, mark) -> new Step.Harden(mark, f.get(heats), f.get(BATH), f.get(OUTSIDE)));
      case COOL -> form(List.of(IN), (f, mark) -> new Step.Cool(mark, f.get(IN)));
    };
  }

  /** With the keys that all steps have. */
  private static Form<Step> form(List<Key<?>> keys, BiFunction<Fields, Mark, Step> maker) {
    List<Key<?>> own =
        Stream.of(List.of(DO), keys, List.of(SEEN, NOTE)).<Key<?>>flatMap(List::stream).toList();
    Key<Optional<StepDoneReader>> done =
        StepDoneReader.key(keys.stream().filter(k -> !k.name().equals("heats")).toList());
    return new Form<>(
        Stream.<Key<?>>concat(own.stream(), Stream.of(done)).toList(),
        f -> {
          Step planned = maker.apply(f, mark(f, Optional.empty()));
          return f.get(done)
              .map(
                  came ->
                      came.over(
                          f.object(),
                          own,
                          g ->
                              maker.apply(
                                  g, mark(g, Optional.of(new StepDone(came.on(), planned))))))
              .orElse(planned);
        });
  }

  private static Mark mark(Fields f, Optional<StepDone> done) {
    Entry object = f.object();
    return new Mark(object.reading().step(), object.place(), f.get(SEEN), f.get(NOTE), done);
  }

  private static Step restack(Fields f, Mark mark) {
    int pieces = f.get(ACROSS) * f.get(HIGH);
    if (pieces < 2 || pieces > MOST_PIECES) {
      throw f.at(ACROSS)
          .fault(
              f.get(ACROSS) + " across by " + f.get(HIGH) + " high makes " + pieces + " pieces",
              "a restack has 2 to " + MOST_PIECES);
    }
    return new Step.Restack(mark, f.get(ACROSS), f.get(HIGH), f.get(TURN), f.get(KERF));
  }

  private static Step tile(Fields f, Mark mark) {
    return new Step.Tile(
        mark,
        f.get(ANGLE),
        f.get(SLICE),
        f.get(GRIND),
        f.get(KERF),
        f.get(COUNT).map(OptionalInt::of).orElse(OptionalInt.empty()),
        f.get(IN_JACKET));
  }

  /** The whole list. A step whose kind cannot be read hides nothing of the others. */
  private static List<Step> steps(Entry list) {
    Faults faults = new Faults();
    List<Optional<Step.Kind>> kinds = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (Entry item : new ListOf<>(MOST_STEPS, "step", DO::in).items(list)) {
      Optional<Step.Kind> kind = faults.tried(() -> DO.in(item));
      kinds.add(kind);
      kind.flatMap(k -> faults.tried(() -> step(k, item.with(item.reading().amid(kinds)))))
          .ifPresent(steps::add);
    }
    faults.throwAny();
    requireFewHeats(steps);
    return List.copyOf(steps);
  }

  private static Step step(Step.Kind kind, Entry item) {
    return form(kind).read(item.named(item.name() + " " + kind.word()));
  }

  private static void requireFewHeats(List<Step> steps) {
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
  }
}
