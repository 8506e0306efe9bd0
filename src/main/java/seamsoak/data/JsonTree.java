package seamsoak.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a JSON file, comments allowed, into values that know their places. */
public final class JsonTree {
  private static final int DEEPEST = 32;

  /** Who writes more of them in one file writes no JSON. */
  private static final int MOST_SLIPS = 50;

  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(JsonReadFeature.ALLOW_JAVA_COMMENTS).build();

  private final String file;
  private final JsonParser parser;

  /** The places of the objects and lists that are open while reading, innermost first. */
  private final Deque<Place> open = new ArrayDeque<>();

  /** What is wrong without keeping the rest from being read. */
  private final Faults faults;

  private JsonTree(String file, JsonParser parser, Faults faults) {
    this.file = file;
    this.parser = parser;
    this.faults = faults;
  }

  /** Reads a file of at most 1 MB; {@link Fault} for anything that is not one JSON value. */
  public static JsonValue read(String fileName, Path path) {
    return parse(fileName, TextFile.read(fileName, path));
  }

  /** Reads text that was read from a file of that name. */
  public static JsonValue parse(String file, String text) {
    Faults faults = new Faults();
    JsonValue root = parsed(file, text, faults);
    faults.throwAny();
    return root;
  }

  /** Whether a text is JSON as it stands, comments allowed. */
  static boolean isStrict(String text) {
    try {
      parsed("", text, new Faults());
      return true;
    } catch (Fault fault) {
      return false;
    }
  }

  /**
   * Reads what a person may have written: quotes may be typographic ({@link Quotes}); slips that
   * leave no doubt ({@link JsonSlip}) and keys that stand twice, of which the first counts, are
   * told to the faults, and the rest is read.
   */
  public static JsonValue parse(String file, String text, Faults faults) {
    try {
      return parsed(file, text, faults);
    } catch (Fault wrong) {
      return straightened(file, text, faults, wrong);
    }
  }

  /** With quotes as JSON has them, where that can be read or be read further. */
  private static JsonValue straightened(String file, String text, Faults faults, Fault wrong) {
    String straight = Quotes.straight(text);
    try {
      return parsed(file, straight, faults);
    } catch (Fault other) {
      boolean asFar = Mistake.BY_PLACE.compare(first(other), first(wrong)) >= 0;
      return mended(file, asFar ? straight : text, faults, asFar ? other : wrong);
    }
  }

  /** With slips put right, each of them told. */
  private static JsonValue mended(String file, String text, Faults faults, Fault wrong) {
    Faults told = new Faults();
    String now = text;
    Fault at = wrong;
    for (int i = 0; i < MOST_SLIPS; i++) {
      Optional<JsonSlip> slip = JsonSlip.at(now, first(at).place());
      if (slip.isEmpty()) {
        break;
      }
      told.add(new Fault(List.of(slip.get().told())));
      now = slip.get().mended();
      try {
        JsonValue root = parsed(file, now, told);
        faults.addAll(told);
        return root;
      } catch (Fault next) {
        at = next;
      }
    }
    told.add(at);
    throw new Fault(told.mistakes());
  }

  private static Mistake first(Fault fault) {
    return fault.mistakes().get(0);
  }

  /** Doubled keys count only where all could be read. */
  private static JsonValue parsed(String file, String text, Faults faults) {
    Faults doubled = new Faults();
    JsonValue root = tree(file, text, doubled);
    faults.addAll(doubled);
    return root;
  }

  private static JsonValue tree(String file, String text, Faults faults) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      JsonTree tree = new JsonTree(file, parser, faults);
      try {
        return tree.whole();
      } catch (JsonEOFException e) {
        throw tree.endsEarly();
      } catch (JsonProcessingException e) {
        throw JsonSyntax.fault(tree.place(e.getLocation()), e.getOriginalMessage());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e); // text in memory cannot fail to be read
    }
  }

  private JsonValue whole() throws IOException {
    JsonToken first = parser.nextToken();
    if (first == null) {
      throw new Fault(Place.of(file), "it holds only comments", "write JSON between braces");
    }
    JsonValue root = value(first);
    if (parser.nextToken() != null) {
      throw new Fault(
          place(), "there is more after the end of the JSON", "remove it or move it inside");
    }
    return root;
  }

  private JsonValue value(JsonToken token) throws IOException {
    Place place = place();
    return switch (token) {
      case START_OBJECT -> new JsonValue.ObjectValue(place, members(place));
      case START_ARRAY -> new JsonValue.ListValue(place, items(place));
      case VALUE_STRING -> new JsonValue.TextValue(place, parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(place, parser.getText());
      case VALUE_TRUE, VALUE_FALSE ->
          new JsonValue.BooleanValue(place, token == JsonToken.VALUE_TRUE);
      default -> new JsonValue.NullValue(place);
    };
  }

  private Map<String, JsonValue.Member> members(Place start) throws IOException {
    enter(start);
    Map<String, JsonValue.Member> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      Place place = place();
      String key = parser.currentName();
      JsonValue.Member member = new JsonValue.Member(place, value(parser.nextToken()));
      JsonValue.Member earlier = members.putIfAbsent(key, member);
      if (earlier != null) {
        faults.add(
            new Fault(
                List.of(
                    new Mistake(
                        place,
                        field(),
                        "the key '" + Fault.shown(key) + "' stands twice",
                        "it already stands in line " + earlier.place().line() + "; keep one"))));
      }
    }
    open.pop();
    return Collections.unmodifiableMap(members);
  }

  /** Where the parser is, such as {@code steps[1].heats}. */
  private String field() {
    String pointer = parser.getParsingContext().pathAsPointer().toString();
    return pointer.substring(1).replaceAll("/([0-9]+)(?=/|$)", "[$1]").replace('/', '.');
  }

  private List<JsonValue> items(Place start) throws IOException {
    enter(start);
    List<JsonValue> items = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      items.add(value(t));
    }
    open.pop();
    return items;
  }

  private void enter(Place start) {
    open.push(start);
    if (open.size() > DEEPEST) {
      throw new Fault(
          start, "brackets are nested deeper than " + DEEPEST, "no file here needs that");
    }
  }

  private static JsonValue number(Place place, String digits) {
    double value = Double.parseDouble(digits);
    if (!Double.isFinite(value)) {
      throw new Fault(
          place, "the number " + Fault.shown(digits) + " is too large", "write a smaller one");
    }
    return new JsonValue.NumberValue(place, value, digits);
  }

  private Fault endsEarly() {
    if (open.isEmpty()) {
      return new Fault(Place.of(file), "the file ends inside a text or comment", "close it");
    }
    return new Fault(
        place(parser.currentLocation()),
        "the file ends too early",
        "close the bracket that opens in line " + open.peek().line());
  }

  private Place place() {
    return place(parser.currentTokenLocation());
  }

  private Place place(JsonLocation at) {
    // where the parser gives up on something too long, it does not say where
    JsonLocation known = at == null ? parser.currentLocation() : at;
    return new Place(file, known.getLineNr(), known.getColumnNr());
  }
}
