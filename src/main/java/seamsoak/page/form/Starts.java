package seamsoak.page.form;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.UnaryOperator;
import seamsoak.billet.file.FormBook;
import seamsoak.data.JsonWriter;

/** Texts that a new billet begins with. */
public final class Starts {
  private static final List<String> PATTERNS = List.of("three-layers", "many-layers", "mosaic");

  private static final String NOTHING =
      """
      { "units": "%s",
        "stack": { "layers": "", "steels": ["", ""], "thickness": ["", ""] },
        "steps": []
      }
      """;

  /** Sizes and heats as the patterns have them. */
  private static final String TWO =
      """
      { "units": "%s",
        "stack": { "layers": %s, "steels": [%s, %s], "thickness": [%s, %s],
          "width": "%s", "length": "%s" },
        "steps": [
          { "do": "weld", "heats": [{ "at": "%s", "for": "5 min", "times": 3 }] }
        ]
      }
      """;

  private Starts() {}

  /**
   * A bar of two steels, welded and no more.
   *
   * @param two what was asked of them, by the names of its fields
   */
  public static String ofTwo(UnaryOperator<String> two, boolean metric, String name) {
    String layer = two.apply("layer");
    String other = two.apply("other").isBlank() ? layer : two.apply("other");
    String count = two.apply("layers");
    return named(
        name,
        TWO.formatted(
            metric ? "metric" : "us",
            count.matches("[0-9]{1,4}") ? count : written(""),
            written(two.apply("first")),
            written(two.apply("second")),
            written(layer),
            written(other),
            metric ? "40 mm" : "1-1/2 in",
            metric ? "150 mm" : "6 in",
            metric ? "1200 C" : "2250 F"));
  }

  private static String written(String text) {
    return JsonWriter.write(text.strip()).strip();
  }

  /**
   * A text of that name; {@code IllegalArgumentException} where there is no such pattern.
   *
   * @param name that the billet is called by
   */
  public static String of(String pattern, boolean metric, String name, FormBook book) {
    int index = PATTERNS.indexOf(pattern);
    if (index < 0 && !pattern.equals("nothing")) {
      throw new IllegalArgumentException("no pattern of ours");
    }
    String text =
        index < 0
            ? NOTHING.formatted(metric ? "metric" : "us")
            : metric ? metric(pattern) : book.patterns().get(index);
    return named(name, text);
  }

  private static String named(String name, String text) {
    return "{ \"name\": " + written(name) + ",\n  " + text.strip().substring(2) + "\n";
  }

  /** Those of BILLET.md are in inches; these are the same in whole millimeters. */
  private static String metric(String pattern) {
    try (InputStream in = Starts.class.getResourceAsStream(pattern + ".json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
