package seamsoak.property.forging;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import seamsoak.data.CsvTable;
import seamsoak.data.DataFolder;
import seamsoak.data.Fault;

/**
 * What old tables call the color of hot steel.
 *
 * <p>The word whose range holds the temperature, or the nearest point. The tables disagree by 80 to
 * 170 C for the same word, and the light of the shop moves them all: so all are told, never one.
 *
 * <p>Chapman, Workshop Technology; a handbook for steam engineers, 1905; Dooley, Applied Science
 * for Metal Workers; second-hand copies.
 */
public final class HeatColors {
  /** Further than this from every point of a table it has no word, K. */
  private static final double FAR = 75;

  private record Named(String color, double lowC, double highC) {
    double away(double celsius) {
      return Math.max(0, Math.max(lowC - celsius, celsius - highC));
    }
  }

  private final Map<String, List<Named>> scales;

  private HeatColors(Map<String, List<Named>> scales) {
    this.scales = scales;
  }

  /** Reads {@code colors.csv}. */
  public static HeatColors load(DataFolder data) {
    Map<String, List<Named>> scales = new LinkedHashMap<>();
    for (CsvTable.Row row : data.csv("colors.csv").someRows()) {
      Named named = new Named(row.text("color"), row.required("low_C"), row.required("high_C"));
      if (named.lowC() > named.highC()) {
        throw new Fault(row.place("low_C"), "low_C is above high_C", "it may not be");
      }
      scales.computeIfAbsent(row.text("scale"), k -> new ArrayList<>()).add(named);
    }
    return new HeatColors(scales);
  }

  /** What the tables call a temperature, each word once; empty below a visible heat. */
  public List<String> words(double celsius) {
    List<String> words = new ArrayList<>();
    for (List<Named> scale : scales.values()) {
      Named nearest =
          scale.stream().reduce((a, b) -> b.away(celsius) < a.away(celsius) ? b : a).orElseThrow();
      if (nearest.away(celsius) <= FAR && !words.contains(nearest.color())) {
        words.add(nearest.color());
      }
    }
    return List.copyOf(words);
  }
}
