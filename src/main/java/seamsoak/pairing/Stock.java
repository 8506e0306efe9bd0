package seamsoak.pairing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Stock that has no analysis, or something on it that must not go into a fire. */
public enum Stock {
  UNKNOWN(
      "unknown-stock",
      List.of("unknown", "scrap", "mystery", "found", "salvage", "salvaged", "junkyard"),
      "Nobody knows what is in it: no heat, no quench and no carbon can be told. Ask for the"
          + " certificate, or harden and break a piece of it, judge its sparks beside a known"
          + " steel, and give the analysis here."),
  PLATED(
      "plated-stock",
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
          "coated"),
      "What is on it makes poisonous fume in the fire and keeps the seam from welding: do not heat"
          + " it. Take bare stock.");

  private final String check;
  private final List<String> words;
  private final String advice;

  Stock(String check, List<String> words, String advice) {
    this.check = check;
    this.words = words;
    this.advice = advice;
  }

  /** Name of the check that speaks of it. */
  public String check() {
    return check;
  }

  /** What to do about it. */
  public String advice() {
    return advice;
  }

  /** The kind of stock that a name tells of, if it does; the worse one first. */
  public static Optional<Stock> named(String text) {
    List<String> said = List.of(text.toLowerCase(Locale.ROOT).split("[^a-z]+"));
    return List.of(PLATED, UNKNOWN).stream()
        .filter(s -> s.words.stream().anyMatch(said::contains))
        .findFirst();
  }
}
