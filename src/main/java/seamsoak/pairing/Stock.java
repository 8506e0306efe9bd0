package seamsoak.pairing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Stock that has no analysis, or something on it that must not go into a fire. */
public enum Stock {
  UNKNOWN(
      CheckName.UNKNOWN_STOCK,
      List.of("unknown", "scrap", "mystery", "found", "salvage", "salvaged", "junkyard")),
  PLATED(
      CheckName.PLATED_STOCK,
      List.of(
          "galvanized",
          "galvanised",
          "zinc",
          "plated",
          "chromed",
          "cadmium",
          "painted",
          "leaded",
          "tinned",
          "coated"));

  private final CheckName check;
  private final List<String> words;

  Stock(CheckName check, List<String> words) {
    this.check = check;
    this.words = words;
  }

  /** The check that speaks of it. */
  CheckName check() {
    return check;
  }

  /** The kind of stock that a name tells of, if it does; the worse one first. */
  public static Optional<Stock> named(String text) {
    List<String> said = List.of(text.toLowerCase(Locale.ROOT).split("[^a-z]+"));
    return List.of(PLATED, UNKNOWN).stream()
        .filter(s -> s.words.stream().anyMatch(said::contains))
        .findFirst();
  }
}
