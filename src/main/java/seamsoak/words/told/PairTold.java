package seamsoak.words.told;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import seamsoak.pairing.Finding;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairLimit;
import seamsoak.pairing.Remedy;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.UnitSystem;
import seamsoak.words.pair.PairWords;
import seamsoak.words.pair.RemedyWords;

/** What was found of a pair, as JSON tells it; the kind of a reason is the name of its check. */
public final class PairTold {
  private PairTold() {}

  public static List<Map<String, Object>> checks(PairAdvice advice) {
    PairWords words = new PairWords(UnitSystem.METRIC, advice);
    return advice.checks().stream().map(f -> check(f, words.reason(f))).toList();
  }

  private static Map<String, Object> check(Finding f, String reason) {
    PairLimit limit = f.limit();
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("name", f.check().key());
    told.put("title", limit.title());
    told.put("rating", f.rating());
    told.put("first", f.first());
    told.put("second", f.second());
    told.put("gap", f.gap());
    told.put("unit", limit.unit());
    told.put("firstRange", ends(f.firstRange()));
    told.put("secondRange", ends(f.secondRange()));
    told.put("rated", f.rated());
    told.put("watch", limit.watch());
    told.put("clash", limit.clash());
    told.put("reason", reason);
    told.put("source", limit.source());
    told.put("standing", limit.standing().words());
    return told;
  }

  private static List<Double> ends(Optional<TemperatureRange> range) {
    return range.stream().flatMap(r -> Stream.of(r.lowC(), r.highC())).toList();
  }

  public static List<Map<String, Object>> remedies(PairAdvice advice) {
    return advice.remedies().stream().map(r -> remedy(r, advice)).toList();
  }

  private static Map<String, Object> remedy(Remedy r, PairAdvice advice) {
    Map<String, Object> told = new LinkedHashMap<>();
    String change = new RemedyWords(UnitSystem.METRIC).change(r, advice);
    Statement.put(told, "change", new Statement(Statement.kindOf(r.change()), change));
    switch (r.change()) {
      case CLOSED_STACK -> number(told, OptionalDouble.empty(), "");
      case LOWER_WELDING_HEAT -> number(told, r.setting().weldingCelsius(), "C");
      case THICKER_LAYERS -> number(told, OptionalDouble.of(1e3 * r.setting().firstMetres()), "mm");
    }
    told.put("rating", r.rating());
    told.put("better", r.better());
    return told;
  }

  private static void number(Map<String, Object> told, OptionalDouble value, String unit) {
    told.put("value", value);
    told.put("unit", unit);
  }
}
