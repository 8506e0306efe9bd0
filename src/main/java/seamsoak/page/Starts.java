package seamsoak.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import seamsoak.billet.file.FormBook;
import seamsoak.data.JsonWriter;

/** Texts that a new billet begins with. */
final class Starts {
  private static final List<String> PATTERNS = List.of("three-layers", "many-layers", "mosaic");

  private static final String NOTHING =
      """
      { "units": "%s",
        "stack": { "layers": "", "steels": ["", ""], "thickness": ["", ""] },
        "steps": []
      }
      """;

  private Starts() {}

  /**
   * A text of that name; {@code IllegalArgumentException} where there is no such pattern.
   *
   * @param name that the billet is called by
   */
  static String of(String pattern, boolean metric, String name, FormBook book) {
    int index = PATTERNS.indexOf(pattern);
    if (index < 0 && !pattern.equals("nothing")) {
      throw new IllegalArgumentException("no pattern of ours");
    }
    String text =
        index < 0
            ? NOTHING.formatted(metric ? "metric" : "us")
            : metric ? metric(pattern) : book.patterns().get(index);
    return "{ \"name\": "
        + JsonWriter.write(name).strip()
        + ",\n  "
        + text.strip().substring(2)
        + "\n";
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
