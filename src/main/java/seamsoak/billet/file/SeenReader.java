package seamsoak.billet.file;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import seamsoak.billet.OldWord;
import seamsoak.billet.Seen;
import seamsoak.billet.Seen.Lie;
import seamsoak.billet.Seen.Where;
import seamsoak.billet.Step;
import seamsoak.data.Fault;
import seamsoak.data.JsonValue.TextValue;
import seamsoak.unit.Length;

/** Reads what the smith saw after a step, in the words that answers use for seams. */
final class SeenReader {
  private static final int MOST = 50;
  private static final Pattern ONE =
      Pattern.compile(
          "(?:(layers)(?: .*)?|(restack|tile)(?:(?<=tile)s)?(?: joints)?"
              + "(?: ([0-9]{1,3})| \\(step ([0-9]{1,3})\\))?)"
              + "(?:,? (side by side|one on another))?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern CROSSING =
      Pattern.compile("(?:where )?(.+?),? cross(?:es)? (.+)", Pattern.CASE_INSENSITIVE);
  private static final String EXPECTED =
      "it is layers, restack or tile, with the number of its step if there are several, such as"
          + " \"restack 4\"";

  /**
   * What was looked at.
   *
   * @param where first named
   * @param across named with it, where it is a crossing of two
   */
  private record Place(Where where, Optional<Where> across) {}

  private static final Key<Optional<Place>> WHERE =
      Key.optional("where", "\"restack 4\"", SeenReader::place);

  /** What was written for {@code where} before. */
  private static final Key<Optional<Place>> SEAMS =
      Key.optional("seams", "\"restack 4\"", SeenReader::place);

  private static final Key<Optional<Seen.Part>> PART =
      Key.optional("part", "\"crossing\"", Values.choice(Seen.Part.class));
  private static final Key<Seen.Look> LINE = Key.required("line", "\"faint\"", SeenReader::look);
  private static final Key<Optional<Length>> WIDTH =
      Key.optional("width", new Key.Example("\"1/32 in\"", "\"0.5 mm\""), Quantities::size);
  private static final Key<Optional<Seen.Etched>> ETCHED =
      Key.optional("etched", "\"as-cooled\"", Values.choice(Seen.Etched.class));
  private static final Key<Optional<LocalDate>> ON = HeatReader.ON;
  private static final Key<Optional<String>> WITH =
      Key.optional("with", "\"ferric chloride, 5 min\"", Values.TEXT);
  static final Form<Seen> SEEN =
      new Form<>(List.of(WHERE, SEAMS, PART, LINE, WIDTH, ETCHED, ON, WITH), SeenReader::seen);

  /** One look or several. */
  static final Reader<List<Seen>> LOOKS = new OneOrMore<>(new ListOf<>(MOST, "seen", SEEN));

  private SeenReader() {}

  private static Seen seen(Fields f) {
    if (f.get(LINE) == Seen.Look.NONE && f.get(WIDTH).isPresent()) {
      throw f.at(WIDTH).fault("width is given for a line that was not seen", "leave it out");
    }
    if (f.get(WHERE).isPresent() == f.get(SEAMS).isPresent()) {
      throw where(f);
    }
    if (f.get(SEAMS).isPresent()) {
      f.at(SEAMS).old(OldWord.Kind.SEAMS);
    }
    Place place = f.get(WHERE).or(() -> f.get(SEAMS)).orElseThrow();
    Seen.Part named = place.across().isPresent() ? Seen.Part.CROSSING : Seen.Part.LINE;
    return new Seen(
        place.where(),
        f.get(PART).orElse(named),
        place.across(),
        f.get(LINE),
        f.get(WIDTH),
        f.get(ETCHED),
        f.get(ON),
        f.get(WITH));
  }

  private static Fault where(Fields f) {
    return f.get(WHERE).isPresent()
        ? f.at(SEAMS).fault("seams is given beside where", "leave it out")
        : WHERE.missing(f.object());
  }

  /** A line that is plainly there was once called clear. */
  private static Seen.Look look(Entry entry) {
    if (entry.value() instanceof TextValue text && text.text().strip().equalsIgnoreCase("clear")) {
      entry.old(OldWord.Kind.CLEAR);
      return Seen.Look.PLAIN;
    }
    return Values.choice(Seen.Look.class).read(entry);
  }

  private static Place place(Entry entry) {
    String text = entry.value() instanceof TextValue t ? t.text().strip() : "";
    Matcher two = CROSSING.matcher(text);
    return two.matches()
        ? new Place(where(entry, two.group(1)), Optional.of(where(entry, two.group(2))))
        : new Place(where(entry, text), Optional.empty());
  }

  private static Where where(Entry entry, String text) {
    Matcher m = ONE.matcher(text);
    if (!m.matches()) {
      throw entry.refused(EXPECTED);
    }
    String kind = Optional.ofNullable(m.group(1)).orElse(m.group(2));
    Seen.Seams seams = Seen.Seams.valueOf(kind.toUpperCase(Locale.ROOT));
    OptionalInt made =
        Stream.of(3, 4)
            .map(m::group)
            .filter(Objects::nonNull)
            .mapToInt(Integer::parseInt)
            .findFirst();
    if (seams.madeBy().isPresent() && !exists(seams.madeBy().get(), made, entry.reading())) {
      throw entry.fault(
          entry.name() + " is '" + text + "' but no such step comes before",
          "name seams that exist by then");
    }
    Optional<Lie> lie =
        Optional.ofNullable(m.group(5))
            .map(l -> Lie.valueOf(l.replace(' ', '_').toUpperCase(Locale.ROOT)));
    return new Where(seams, made, lie);
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
