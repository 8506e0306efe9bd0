package seamsoak.billet.file;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import seamsoak.billet.Seen;
import seamsoak.billet.Step;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.unit.Length;

/** Reads what the smith saw after a step. */
final class SeenReader {
  private static final Pattern NAMED =
      Pattern.compile(
          "(layers|restack|tile)(?:(?<=tile)s)?(?: joints)?"
              + "(?: ([0-9]{1,3})| \\(step ([0-9]{1,3})\\))?",
          Pattern.CASE_INSENSITIVE);

  /**
   * Seams by the name that they have in a file.
   *
   * @param kind of seam
   * @param step that made them, if said
   */
  private record Named(Seen.Seams kind, OptionalInt step) {}

  private static final Key<Named> SEAMS = Key.required("seams", "\"restack\"", SeenReader::seams);
  private static final Key<Seen.Look> LINE =
      Key.required("line", "\"none\"", Values.choice(Seen.Look.class));
  private static final Key<Optional<Length>> WIDTH =
      Key.optional("width", new Key.Example("\"1/32 in\"", "\"0.5 mm\""), Quantities::size);
  static final Form<Seen> SEEN = new Form<>(List.of(SEAMS, LINE, WIDTH), SeenReader::seen);

  private SeenReader() {}

  private static Seen seen(Fields f) {
    if (f.get(LINE) == Seen.Look.NONE && f.get(WIDTH).isPresent()) {
      throw f.at(WIDTH).fault("width is given for a line that was not seen", "leave it out");
    }
    Named seams = f.get(SEAMS);
    return new Seen(seams.kind(), seams.step(), f.get(LINE), f.get(WIDTH));
  }

  private static Named seams(Entry entry) {
    Matcher m = NAMED.matcher(entry.value() instanceof TextValue text ? text.text().strip() : "");
    if (!m.matches()) {
      throw entry.refused(
          "it is layers, restack or tile, with the number of its step if there are several, such as"
              + " \"restack 4\"");
    }
    Seen.Seams kind = Seen.Seams.valueOf(m.group(1).toUpperCase(Locale.ROOT));
    OptionalInt made =
        Stream.of(2, 3)
            .map(m::group)
            .filter(Objects::nonNull)
            .mapToInt(Integer::parseInt)
            .findFirst();
    if (kind.madeBy().isPresent() && !exists(kind.madeBy().get(), made, entry.reading())) {
      throw entry.fault(
          "seams is '" + m.group() + "' but no such step comes before",
          "name seams that exist by then");
    }
    return new Named(kind, made);
  }

  /** Whether the step that made the seams comes before, or is this one, as far as is known. */
  private static boolean exists(Step.Kind kind, OptionalInt made, Reading reading) {
    List<Optional<Step.Kind>> steps = reading.steps();
    if (made.isEmpty()) {
      return steps.stream().anyMatch(known -> known.isEmpty() || known.get() == kind);
    }
    int number = made.getAsInt();
    return number >= 1
        && number <= steps.size()
        && steps.get(number - 1).map(known -> known == kind).orElse(true);
  }
}
