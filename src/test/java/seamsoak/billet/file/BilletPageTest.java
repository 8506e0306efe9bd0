package seamsoak.billet.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.billet.Assumptions;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Defaults;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.data.DataFolder;
import seamsoak.data.JsonPath;
import seamsoak.data.JsonTree;
import seamsoak.data.JsonValue;
import seamsoak.support.Walks;
import seamsoak.unit.UnitSystem;

/** The page that lists every key of a billet file, held against the reader. */
class BilletPageTest {
  private static final Path PAGE = Path.of("alloy-data/BILLET.md");

  static Stream<String> headings() {
    return FormBook.forms().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("headings")
  void everyKeyStandsOnThePageAsTheReaderHasIt(String heading) {
    Map<String, List<FormBook.Line>> tables = FormBook.tables(page());
    List<FormBook.Line> lines = new ArrayList<>(tables.get(heading));
    Form<?> form = FormBook.forms().get(heading);
    boolean step = form.keys().stream().anyMatch(k -> k.name().equals("do"));
    if (step) {
      lines.addAll(tables.get("every step"));
    }
    Map<String, Key<?>> keys =
        form.keys().stream().collect(Collectors.toMap(Key::name, key -> key));
    assertEquals(keys.keySet(), lines.stream().map(FormBook.Line::key).collect(Collectors.toSet()));
    assertEquals(keys.size(), lines.size(), "a key stands twice");
    for (FormBook.Line line : lines) {
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
    Set<String> known = FormBook.forms().keySet().stream().collect(Collectors.toSet());
    known.add("every step");
    assertEquals(known, FormBook.tables(page()).keySet());
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
    return FormBook.patterns(page());
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

  /** What is assumed where a key is left out is told by its line. */
  @Test
  void defaultsAreTold() {
    told("a heat", "rise", Defaults.RISE.format(UnitSystem.US));
    told("soak, what is allowed", "most", Defaults.MOST_SOAK.format(UnitSystem.US));
    told("blade", "hardness", Defaults.HARDNESS.format(UnitSystem.US));
    told("kiln", "highest", Defaults.KILN_HIGHEST.format(UnitSystem.BOTH));
    told("kiln", "ramp", Defaults.KILN_RAMP.format(UnitSystem.BOTH));
    told("restack", "kerf", Defaults.KERF.format(UnitSystem.BOTH));
    told("tile", "kerf", Defaults.KERF.format(UnitSystem.BOTH));
    told("the file", "covered", Defaults.COVERED.format(UnitSystem.US));
  }

  private static void told(String table, String key, String value) {
    String meaning =
        FormBook.tables(page()).get(table).stream()
            .filter(l -> l.key().equals(key))
            .findFirst()
            .orElseThrow()
            .meaning();
    assertTrue(meaning.contains(value + " unless given"), table + " " + key + ": " + value);
  }

  /** Every key that a form shows is found by its way through a file. */
  @Test
  void keysAreFoundByTheirWay() {
    FormBook book = new FormBook(Walks.NAMES, DataFolder.packed());
    JsonValue mosaic = JsonTree.parse("f", blocks().get(2));
    assertEquals(new FormKey.Amount(), way(book, mosaic, "steps[0].heats[0].at"));
    assertEquals(new FormKey.SteelName(), way(book, mosaic, "stack.steels[1]"));
    assertEquals(new FormKey.SteelName(), way(book, mosaic, "steps[6].jacket.steel"));
    assertEquals(new FormKey.Prose(), way(book, mosaic, "name"));
    assertEquals(new FormKey.Amount(), way(book, mosaic, "equipment.kiln.highest"));
    assertEquals(
        new FormKey.OneOf(List.of("none", "alternate", "all")), way(book, mosaic, "steps[3].turn"));
    for (String none : List.of("", "steps[0].turn", "steps[99].at", "stack[0]", "nonsense.at")) {
      assertTrue(book.find(mosaic, JsonPath.of(none)).isEmpty(), none);
    }
    for (FormKey key : book.step(Step.Kind.TILE).keys()) {
      assertFalse(key.meaning().isBlank(), key.name());
    }
  }

  private static FormKey.Way way(FormBook book, JsonValue root, String path) {
    return book.find(root, JsonPath.of(path)).orElseThrow().way();
  }

  /** The words that a key may have; none where it takes others. */
  private static List<String> choices(Key<?> key) {
    return key.values() instanceof Choice<?> choice ? choice.words() : List.of();
  }

  private static String page() {
    try {
      return Files.readString(PAGE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
