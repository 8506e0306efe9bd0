package seamsoak.single;

import java.util.LinkedHashMap;
import java.util.Map;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;

/** What the table has of a steel, by name, and why a figure is missing. */
final class SteelFigures {
  private SteelFigures() {}

  static Map<String, Unknown> unknown(boolean transforms, boolean hardens, boolean reached) {
    Map<String, Unknown> why = new LinkedHashMap<>();
    if (!transforms) {
      why.put("ac1C", Unknown.ALWAYS_AUSTENITE);
      why.put("ac3OrAccmC", Unknown.ALWAYS_AUSTENITE);
    }
    if (!hardens) {
      why.put("msC", Unknown.NO_MARTENSITE);
    } else if (!reached) {
      why.put("msC", Unknown.TOO_MUCH_ALLOY);
    }
    return why;
  }

  static Map<String, Double> analysis(Composition c) {
    Map<String, Double> all = new LinkedHashMap<>();
    all.put(Element.C.symbol(), c.carbon());
    c.elements().forEach(e -> all.put(e.symbol(), c.percent(e)));
    return all;
  }

  static Map<String, TemperatureRange> ranges(Steel s) {
    Map<String, TemperatureRange> all = new LinkedHashMap<>();
    s.heatTreatment().normalize().ifPresent(r -> all.put("normalize", r));
    s.heatTreatment().anneal().ifPresent(r -> all.put("anneal", r));
    s.heatTreatment().harden().ifPresent(r -> all.put("harden", r));
    s.heatTreatment().temper().ifPresent(r -> all.put("temper", r));
    s.heatTreatment().sheetTemper().ifPresent(r -> all.put("sheetTemper", r));
    return all;
  }

  static Map<String, Double> published(Steel s) {
    Map<String, Double> all = new LinkedHashMap<>();
    s.ac1C().ifPresent(v -> all.put("ac1C", v));
    s.ac3OrAccmC().ifPresent(v -> all.put("ac3OrAccmC", v));
    s.msC().ifPresent(v -> all.put("msC", v));
    s.heatTreatment().forgeStartC().ifPresent(v -> all.put("forgeStartC", v));
    s.heatTreatment().forgeStopC().ifPresent(v -> all.put("forgeStopC", v));
    return all;
  }
}
