package seamsoak.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a hand does, as WebDriver is told of it over either of its lines. */
final class Gestures {
  private static final String SHIFT = "\uE008";

  private Gestures() {}

  /** A tap at a place of the window. */
  static Map<String, Object> tap(double x, double y) {
    return of(
        Map.of(
            "type",
            "pointer",
            "id",
            "hand",
            "parameters",
            Map.of("pointerType", "mouse"),
            "actions",
            List.of(
                Map.of("type", "pointerMove", "x", (int) x, "y", (int) y),
                Map.of("type", "pointerDown", "button", 0),
                Map.of("type", "pointerUp", "button", 0))));
  }

  /** A key such as {@code Tab}. */
  static Map<String, Object> key(String name) {
    return pressed(List.of(named(name)));
  }

  /** The same with the shift key held. */
  static Map<String, Object> back(String name) {
    return keys(
        List.of(
            Map.of("type", "keyDown", "value", SHIFT),
            Map.of("type", "keyDown", "value", named(name)),
            Map.of("type", "keyUp", "value", named(name)),
            Map.of("type", "keyUp", "value", SHIFT)));
  }

  private static String named(String name) {
    return switch (name) {
      case "Tab" -> "\uE004";
      case "Enter" -> "\uE007";
      case "Escape" -> "\uE00C";
      case "ArrowUp" -> "\uE013";
      case "ArrowDown" -> "\uE015";
      default -> name;
    };
  }

  static Map<String, Object> letters(String text) {
    return pressed(text.codePoints().mapToObj(Character::toString).toList());
  }

  private static Map<String, Object> pressed(List<String> values) {
    List<Map<String, String>> actions = new ArrayList<>();
    for (String value : values) {
      actions.add(Map.of("type", "keyDown", "value", value));
      actions.add(Map.of("type", "keyUp", "value", value));
    }
    return keys(actions);
  }

  private static Map<String, Object> keys(List<Map<String, String>> actions) {
    return of(Map.of("type", "key", "id", "keys", "actions", actions));
  }

  private static Map<String, Object> of(Map<String, Object> source) {
    return Map.of("actions", List.of(source));
  }
}
