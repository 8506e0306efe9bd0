package seamsoak.billet.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.billet.Assumptions;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.data.Fault;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.data.Place;
import seamsoak.support.Walks;

/** The page that lists every key of a billet file, held against the reader. */
class BilletPageTest {
  private static final Path PAGE = Path.of("alloy-data/BILLET.md");
  private static final Pattern ROW =
      Pattern.compile("\\| `([a-z0-9]+)` \\| (•?) ?\\| `(.*)` \\| (.+) \\|");

  /** A line of a table. */
  private record Line(String key, boolean needed, String example, String meaning) {}

  /** The objects of a file by the headings of their tables. */
  private static Map<String, Form<?>> forms() {
    Map<String, Form<?>> all = new LinkedHashMap<>();
    all.put("the file", BilletReader.BILLET);
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
      all.put(kind == Step.Kind.SOAK ? "soak, a step" : kind.word(), StepReader.form(kind));
    }
    return all;
  }

  private static Map<String, List<Line>> tables() {
    Map<String, List<Line>> all = new LinkedHashMap<>();
    List<Line> open = new ArrayList<>();
    for (String line : page().lines().toList()) {
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

  static Stream<String> headings() {
    return forms().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("headings")
  void everyKeyStandsOnThePageAsTheReaderHasIt(String heading) {
    Map<String, List<Line>> tables = tables();
    List<Line> lines = new ArrayList<>(tables.get(heading));
    Form<?> form = forms().get(heading);
    boolean step = form.keys().stream().anyMatch(k -> k.name().equals("do"));
    if (step) {
      lines.addAll(tables.get("every step"));
    }
    Map<String, Key<?>> keys =
        form.keys().stream().collect(Collectors.toMap(Key::name, key -> key));
    assertEquals(keys.keySet(), lines.stream().map(Line::key).collect(Collectors.toSet()));
    assertEquals(keys.size(), lines.size(), "a key stands twice");
    for (Line line : lines) {
      Key<?> key = keys.get(line.key());
      assertEquals(key.absent().isEmpty(), line.needed(), heading + " " + line.key());
      assertEquals(key.example().us(), line.example(), heading + " " + line.key());
      for (String word : choices(key)) {
        assertTrue(
            Pattern.compile("\\b" + word + "\\b").matcher(line.meaning()).find(),
            heading + " " + line.key() + " may be " + word);
      }
    }
  }

  @Test
  void thereIsATableForEveryObjectAndNoOther() {
    Set<String> known = forms().keySet().stream().collect(Collectors.toSet());
    known.add("every step");
    assertEquals(known, tables().keySet());
  }

  /** Examples are there to be copied: the reader takes each, in both systems. */
  @Test
  void everyExampleIsRead() {
    for (Key<?> key : Keys.all().toList()) {
      for (String example : List.of(key.example().us(), key.example().metric())) {
        boolean names = Set.of("where", "seams", "seen", "curve").contains(key.name());
        if (example.contains("...") || names) {
          continue; // cut short, or speaks of what another part of a file has
        }
        JsonValue value = JsonTree.parse("f", example);
        key.values().read(new Entry(value, key.name(), key.name(), new Reading(Walks.NAMES)));
      }
    }
  }

  static List<String> blocks() {
    List<String> all = new ArrayList<>();
    Matcher block = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL).matcher(page());
    while (block.find()) {
      all.add(block.group(1));
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void everyBilletOnThePageCanBeMade(String json) {
    Shop shop = new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.SAMPLE);
    new BilletWalk(shop).walk(Walks.billet(json));
  }

  @Test
  void theFirstBilletHasTenLines() {
    assertEquals(3, blocks().size());
    assertEquals(10, blocks().get(0).lines().count());
  }

  /** The words that a key may have, as its own sentence lists them; none where it takes others. */
  private static List<String> choices(Key<?> key) {
    JsonValue nonsense = new JsonValue.TextValue(Place.of("f"), "qqqqqqqqqqqq");
    try {
      key.values().read(new Entry(nonsense, key.name(), key.name(), new Reading(Walks.NAMES)));
      return List.of();
    } catch (Fault fault) {
      String expected = fault.mistakes().get(0).expected();
      return expected.startsWith("it is one of ")
          ? List.of(expected.substring("it is one of ".length()).split(", "))
          : List.of();
    }
  }

  private static String page() {
    try {
      return Files.readString(PAGE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
