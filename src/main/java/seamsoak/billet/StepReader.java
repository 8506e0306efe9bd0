package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue;
import seamsoak.unit.Length;

/** Reads the steps of a billet in their order. */
final class StepReader {
  private static final int MOST_PIECES = 1000;
  private static final List<String> HEAT_KEYS = List.of("at", "for", "times", "rise", "cool");
  private static final Pattern SEAMS =
      Pattern.compile(
          "(layers|restack|tile)(?:(?<=tile)s)?(?: joints)?"
              + "(?: ([0-9]{1,3})| \\(step ([0-9]{1,3})\\))?");

  /**
   * How a step is read.
   *
   * @param keys of it besides those that all have, in the order an error shows them
   * @param maker of the step
   */
  private record Form(List<String> keys, BiFunction<Fields, Step.Mark, Step> maker) {}

  private Form form(Step.Kind kind) {
    return switch (kind) {
      case WELD ->
          new Form(
              List.of("heats", "faces", "outside", "can"),
              (f, mark) ->
                  new Step.Weld(
                      mark,
                      heats(f),
                      f.optional("faces", exposure()),
                      outside(f),
                      f.optional("can", StepReader::can)));
      case DRAW ->
          new Form(
              List.of("thickness", "width", "heats", "outside"),
              (f, mark) ->
                  new Step.Draw(
                      mark, thickness(f), f.required("width", Values::size), heats(f), outside(f)));
      case PRESS ->
          new Form(
              List.of("thickness", "width", "heats", "outside"),
              (f, mark) ->
                  new Step.Press(
                      mark, thickness(f), f.optional("width", Values::size), heats(f), outside(f)));
      case ROLL ->
          new Form(
              List.of("thickness", "heats", "outside"),
              (f, mark) -> new Step.Roll(mark, thickness(f), heats(f), outside(f)));
      case GRIND ->
          new Form(
              List.of("depth"),
              (f, mark) -> new Step.Grind(mark, f.required("depth", Values::size)));
      case RESTACK -> new Form(List.of("across", "high", "turn", "kerf"), StepReader::restack);
      case TILE ->
          new Form(List.of("angle", "slice", "grind", "kerf", "count", "jacket"), this::tile);
      case UNJACKET ->
          new Form(
              List.of("depth"),
              (f, mark) -> new Step.Unjacket(mark, f.optional("depth", Values::depth)));
      case SOAK ->
          new Form(
              List.of("heats", "outside"), (f, mark) -> new Step.Soak(mark, heats(f), outside(f)));
      case NORMALIZE ->
          new Form(
              List.of("heats", "outside"),
              (f, mark) -> new Step.Normalize(mark, heats(f), outside(f)));
      case COOL ->
          new Form(
              List.of("in"),
              (f, mark) -> new Step.Cool(mark, f.required("in", Values.choice(Cooling.class))));
    };
  }

  private final SteelReader steels;
  private final List<Step> before = new ArrayList<>();

  private StepReader(SteelReader steels) {
    this.steels = steels;
  }

  /** Reads the whole list; one reader per file, since a step may speak of those before it. */
  static Fields.Reader<Step> inOrder(SteelReader steels) {
    StepReader reader = new StepReader(steels);
    return (value, name) -> {
      Step step = reader.step(value);
      reader.before.add(step);
      return step;
    };
  }

  private Step step(JsonValue value) {
    int number = before.size() + 1;
    Fields any = Fields.of(value, "step " + number);
    Step.Kind kind = any.required("do", Values.choice(Step.Kind.class));
    Form form = form(kind);
    List<String> keys =
        Stream.of(List.of("do"), form.keys(), List.of("seen", "note"))
            .flatMap(List::stream)
            .toList();
    Fields f = Fields.of(value, "step " + number + " " + kind.word(), keys);
    Step.Mark mark =
        new Step.Mark(
            number,
            f.place(),
            f.optional("seen", (v, key) -> seen(v, number, kind)),
            f.optional("note", Values::text));
    return form.maker().apply(f, mark);
  }

  private static Step restack(Fields f, Step.Mark mark) {
    int across = f.required("across", Values.count(1, MOST_PIECES));
    int high = f.required("high", Values.count(1, MOST_PIECES));
    int pieces = across * high;
    if (pieces < 2 || pieces > MOST_PIECES) {
      throw new Fault(
          f.place("across"),
          across + " across by " + high + " high makes " + pieces + " pieces",
          "a restack has 2 to " + MOST_PIECES);
    }
    return new Step.Restack(
        mark,
        across,
        high,
        f.optional("turn", Values.choice(Turn.class)),
        f.optional("kerf", Values::depth));
  }

  private Step tile(Fields f, Step.Mark mark) {
    return new Step.Tile(
        mark,
        f.required("angle", Values::cut),
        f.required("slice", Values::size),
        f.optional("grind", Values::depth),
        f.optional("kerf", Values::depth),
        f.optional("count", Values.count(2, MOST_PIECES))
            .map(OptionalInt::of)
            .orElse(OptionalInt.empty()),
        f.optional("jacket", this::jacket));
  }

  private static Can can(JsonValue value, String name) {
    Fields f = Fields.of(value, name, List.of("inside", "vent"));
    return new Can(
        f.optional("inside", Values.choice(Can.Inside.class)),
        f.optional("vent", Values.choice(Can.Vent.class)));
  }

  private Jacket jacket(JsonValue value, String name) {
    Fields f = Fields.of(value, name, List.of("steel", "thickness", "coating"));
    return new Jacket(
        f.required("steel", steels),
        thickness(f),
        f.optional("coating", Values.choice(Coating.class)));
  }

  private static List<Heat> heats(Fields f) {
    return f.required("heats", Values.list(100, StepReader::heat));
  }

  private static Heat heat(JsonValue value, String name) {
    Fields f = Fields.of(value, "a heat", HEAT_KEYS);
    return new Heat(
        f.required("at", Values::temperature),
        f.required("for", Values::time),
        f.optional("times", Values.count(1, 100)).orElse(1),
        f.optional("rise", Values::time),
        f.optional("cool", Values.choice(Cooling.class)));
  }

  private static Length thickness(Fields f) {
    return f.required("thickness", Values::size);
  }

  private static Optional<Exposure> outside(Fields f) {
    return f.optional("outside", exposure());
  }

  private static Fields.Reader<Exposure> exposure() {
    return Values.choice(Exposure.class);
  }

  private Seen seen(JsonValue value, int number, Step.Kind own) {
    Fields f = Fields.of(value, "seen", List.of("seams", "line", "width"));
    Matcher seams = f.required("seams", StepReader::seams);
    Seen.Seams kind = Seen.Seams.valueOf(seams.group(1).toUpperCase(Locale.ROOT));
    OptionalInt made =
        Stream.of(2, 3)
            .map(seams::group)
            .filter(Objects::nonNull)
            .mapToInt(Integer::parseInt)
            .findFirst();
    if (kind.madeBy().isPresent() && !exists(kind.madeBy().get(), made, number, own)) {
      throw new Fault(
          f.place("seams"),
          "seams is '" + seams.group() + "' but no such step comes before",
          "name seams that exist by then");
    }
    Seen.Look line = f.required("line", Values.choice(Seen.Look.class));
    Optional<Length> width = f.optional("width", Values::size);
    if (line == Seen.Look.NONE && width.isPresent()) {
      throw new Fault(
          f.place("width"), "width is given for a line that was not seen", "leave it out");
    }
    return new Seen(kind, made, line, width);
  }

  private static Matcher seams(JsonValue value, String name) {
    Matcher m = SEAMS.matcher(value instanceof JsonValue.TextValue text ? text.text() : "");
    if (!m.matches()) {
      throw new Fault(
          value.place(),
          name + " is " + Values.described(value),
          "it is layers, restack or tile, with the number of its step if there are several, such as"
              + " \"restack 4\"");
    }
    return m;
  }

  /** Whether the step that made the seams comes before, or is this one. */
  private boolean exists(Step.Kind kind, OptionalInt made, int number, Step.Kind own) {
    boolean here = kind == own && made.orElse(number) == number;
    return here
        || before.stream()
            .anyMatch(s -> s.kind() == kind && made.orElse(s.mark().number()) == s.mark().number());
  }
}
