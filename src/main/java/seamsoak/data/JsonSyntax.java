package seamsoak.data;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in the user's words what the JSON parser stumbled over. */
final class JsonSyntax {
  private static final Pattern CULPRIT =
      Pattern.compile("(?:character|token|marker|escape) \\(?'(.+?)'");

  /** A phrase of the parser's message and what to do about it; the first that occurs counts. */
  private static final Map<String, String> CURES = new LinkedHashMap<>();

  static {
    CURES.put("exceeds the maximum", "a text or number here is far too long");
    CURES.put("to start field name", "a key in double quotes should stand here");
    CURES.put(
        "expecting comma",
        "put a comma between entries, and write in, not an inch mark, inside a text");
    CURES.put("expecting a colon", "put a colon between a key and its value");
    CURES.put("Illegal unquoted", "close a text with a double quote on its own line");
    CURES.put("escape", "in a text write \\\\ for a backslash and \\\" for a double quote");
    CURES.put("close marker", "close each bracket with its own kind");
    CURES.put("numeric value", "write a plain number, or a quantity as a text in double quotes");
    CURES.put("valid value", "a value should stand here; is there a comma too many?");
    CURES.put("token '", "put a text in double quotes, such as \"38 mm\" or \"covered\"");
  }

  private JsonSyntax() {}

  static Fault fault(Place place, String message) {
    Matcher m = CULPRIT.matcher(message);
    String found =
        m.find() ? "'" + Fault.shown(m.group(1)) + "' does not belong here" : "this is not JSON";
    String cure = "check quotes, commas and brackets";
    for (Map.Entry<String, String> e : CURES.entrySet()) {
      if (message.contains(e.getKey())) {
        cure = e.getValue();
        break;
      }
    }
    return new Fault(place, found, cure);
  }
}
