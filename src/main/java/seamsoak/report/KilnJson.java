package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import seamsoak.kiln.Apart;
import seamsoak.kiln.KilnPlan;
import seamsoak.kiln.Load;
import seamsoak.trace.Trace;
import seamsoak.unit.UnitSystem;
import seamsoak.words.kiln.KilnWords;
import seamsoak.words.told.Statement;

/** Several billets in one kiln, as JSON. */
public final class KilnJson {
  private KilnJson() {}

  public static String of(KilnPlan plan, Trace sources) {
    KilnWords words = new KilnWords(plan, UnitSystem.METRIC);
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("verdict", Statement.kindOf(plan.verdict()));
    all.put("kilnC", plan.kilnC());
    all.put("loadsAlone", plan.alone());
    all.put("billets", plan.billets().stream().map(KilnJson::billet).toList());
    all.put(
        "loads",
        IntStream.range(0, plan.loads().size())
            .mapToObj(i -> load(i + 1, plan.loads().get(i)))
            .toList());
    all.put("apart", plan.apart().stream().map(a -> apart(a, words)).toList());
    all.put(
        "remarks",
        plan.remarks().stream().map(r -> said(Statement.kindOf(r), KilnWords.remark(r))).toList());
    return JsonReport.write("kiln", all, sources);
  }

  private static Map<String, Object> billet(KilnPlan.Billet b) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("file", b.file());
    told.put("billet", b.name());
    told.put("clears", b.clears());
    Statement.put(told, "hardStops", b.stops());
    return told;
  }

  private static Map<String, Object> load(int number, Load load) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("load", number);
    told.put("kind", load.kind().word());
    told.put("temperatureC", load.celsius());
    told.put("kilnMinutes", load.kilnMinutes());
    told.put("minutes", load.minutes());
    told.put("aloneMinutes", load.aloneMinutes());
    told.put("pieces", load.pieces().stream().map(KilnJson::piece).toList());
    told.put("fall", load.fall());
    List<Map<String, Object>> out = new ArrayList<>();
    for (Load.Out o : load.out()) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("billet", o.billet() + 1);
      one.putAll(said(Statement.kindOf(o.why()), KilnWords.why(o.why())));
      out.add(one);
    }
    told.put("out", out);
    return told;
  }

  private static Map<String, Object> piece(Load.Piece p) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("billet", p.billet() + 1);
    told.put("step", p.step());
    told.put("plannedC", p.window().plannedC());
    told.put("lowC", p.window().lowC());
    told.put("highC", p.window().highC());
    told.put("inMinutes", p.inMinutes());
    told.put("riseMinutes", p.riseMinutes());
    told.put("leastMinutes", p.leastMinutes());
    told.put("mostMinutes", p.mostMinutes());
    told.put("heldMinutes", p.heldMinutes());
    told.put("outMinutes", p.outMinutes());
    told.put("then", Statement.kindOf(p.then()));
    told.put("quenchant", p.bath());
    told.put("grainNumbersCoarser", p.becomes().coarser());
    told.put("hrc", p.becomes().hrc().map(Load.Hrc::here));
    told.put("plannedHrc", p.becomes().hrc().map(Load.Hrc::planned));
    return told;
  }

  private static Map<String, Object> apart(Apart apart, KilnWords words) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("step", apart.kind().word());
    if (apart instanceof Apart.Windows w) {
      told.put("windows", List.of(window(w.cooler()), window(w.hotter())));
    }
    if (apart instanceof Apart.BySheet s) {
      told.put("sheet", window(s.own()));
      told.put("meets", s.meets().stream().map(KilnJson::window).toList());
      told.put("parted", s.parted().stream().map(KilnJson::window).toList());
    }
    told.putAll(said(kind(apart), words.apart(apart)));
    return told;
  }

  private static String kind(Apart apart) {
    return apart instanceof Apart.Windows
        ? "windows-do-not-meet"
        : apart instanceof Apart.KilnTooCool
            ? "kiln-too-cool"
            : apart instanceof Apart.BySheet ? "by-sheet" : "falls-apart";
  }

  private static Map<String, Object> window(Load.Window w) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("billet", w.billet() + 1);
    told.put("lowC", w.lowC());
    told.put("highC", w.highC());
    return told;
  }

  private static Map<String, Object> said(String kind, String says) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("why", says);
    told.put("whyKind", kind);
    return told;
  }
}
