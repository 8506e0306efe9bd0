package seamsoak.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style and the script that every page carries. */
final class Look {
  static final String STYLE = text("page.css");
  static final String SCRIPT = text("page.js") + text("whatif.js");
  static final String FIRE_STYLE = STYLE + text("fire.css");
  static final String FIRE_SCRIPT = text("fire.js");
  static final String ETCH_STYLE = FIRE_STYLE + text("etch.css");
  static final String ETCH_SCRIPT = text("etch.js");

  private Look() {}

  private static String text(String name) {
    try (InputStream in = Look.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
