package seamsoak.words;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.single.SteelReport;
import seamsoak.single.Unknown;
import seamsoak.unit.UnitSystem;

/** One steel of the table, or of the user's own. */
public record SteelWords(SteelReport steel, UnitSystem units) {
  /** What it consists of. */
  public String analysis() {
    String analysis =
        steel.analysisPct().entrySet().stream()
            .map(e -> e.getKey() + " " + Amounts.plain(e.getValue()))
            .collect(Collectors.joining(", "));
    return steel.designation() + ", " + steel.category() + ": " + analysis + " wt%, the rest iron.";
  }

  /** Its other names, blank without any. */
  public String aliases() {
    return steel.aliases().isEmpty()
        ? ""
        : "Also known as " + String.join(", ", steel.aliases()) + ".";
  }

  /** What Ms is told for, blank where there is none. */
  public String martensite() {
    return steel.msC().isEmpty()
        ? ""
        : "Ms is for %s %% carbon dissolved at %s."
            .formatted(
                Amounts.percent(steel.dissolvedCarbonPct()),
                new Amounts(units).heat(steel.hardenC()));
  }

  /** What it is quenched in, and how hard it gets; blank where no sheet says and it stays soft. */
  public String quench() {
    return Stream.concat(
            steel.sheetQuench().map(q -> "Quench by its sheets: " + q + ".").stream(),
            steel.blade().map(this::blade).stream())
        .collect(Collectors.joining(" "));
  }

  private String blade(SteelReport.Blade b) {
    Amounts amounts = new Amounts(units);
    return "A blade of "
        + amounts.millimetres(b.thicknessMm())
        + ", from "
        + amounts.heat(steel.hardenC())
        + " in "
        + b.quenchantName()
        + b.edgeHrc()
            .map(
                edge ->
                    Amounts.format(
                        ": %.0f HRC as quenched at a thin edge, %.0f in the middle; depth of"
                            + " hardening %s.",
                        edge, b.coreHrc().orElseThrow(), amounts.millimetres(b.idealDiameterMm())))
            .orElse("; it has too much alloy for the formulas to tell how hard it gets.");
  }

  /** The name of a published range, as {@code sheetTemper} is one. */
  public static String range(String name) {
    return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  /** Why a temperature is not given, those of one reason together. */
  public List<String> unknown() {
    return steel.unknown().values().stream()
        .distinct()
        .map(why -> "Unknown (" + names(why) + "): " + why(why) + ".")
        .toList();
  }

  /** No sentence of its own. */
  public static String why(Unknown unknown) {
    return switch (unknown) {
      case ALWAYS_AUSTENITE ->
          "with 8 % nickel or more it is austenite at every temperature (judgement): it has neither"
              + " ferrite nor pearlite to turn";
      case TOO_MUCH_ALLOY ->
          "it has more chromium or nickel than the formulas were made for, and carbide that keeps"
              + " carbon back: go by its sheet";
      case NO_MARTENSITE -> "the formulas put it at absolute zero or below: no martensite forms";
    };
  }

  private String names(Unknown why) {
    Map<String, String> known = Map.of("ac1C", "Ac1", "ac3OrAccmC", steel.upper(), "msC", "Ms");
    return steel.unknown().entrySet().stream()
        .filter(e -> e.getValue().equals(why))
        .map(e -> known.getOrDefault(e.getKey(), e.getKey()))
        .collect(Collectors.joining(", "));
  }
}
