package seamsoak.words;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import seamsoak.single.SteelReport;
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

  /** Why a temperature is not given, those of one reason together. */
  public List<String> unknown() {
    return steel.unknown().values().stream()
        .distinct()
        .map(why -> "Unknown (" + names(why) + "): " + why + ".")
        .toList();
  }

  private String names(String why) {
    Map<String, String> known = Map.of("ac1C", "Ac1", "ac3OrAccmC", steel.upper(), "msC", "Ms");
    return steel.unknown().entrySet().stream()
        .filter(e -> e.getValue().equals(why))
        .map(e -> known.getOrDefault(e.getKey(), e.getKey()))
        .collect(Collectors.joining(", "));
  }
}
