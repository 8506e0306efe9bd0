package seamsoak.words.told;

import java.util.LinkedHashMap;
import java.util.Map;
import seamsoak.data.JsonWriter;
import seamsoak.single.SteelReport;
import seamsoak.words.SteelWords;

/** One steel, as JSON tells it. */
public final class SteelTold {
  private SteelTold() {}

  /** Its members; beside why a temperature is unknown, by its name, stands the kind of that. */
  public static Map<String, Object> members(SteelReport steel) {
    Map<String, Object> all = new LinkedHashMap<>(JsonWriter.members(steel));
    Map<String, String> says = new LinkedHashMap<>();
    Map<String, String> kinds = new LinkedHashMap<>();
    steel.unknown().forEach((name, u) -> says.put(name, SteelWords.why(u)));
    steel.unknown().forEach((name, u) -> kinds.put(name, Statement.kindOf(u)));
    all.put("unknown", says);
    all.put("unknownKinds", kinds);
    return all;
  }
}
