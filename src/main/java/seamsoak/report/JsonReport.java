package seamsoak.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import seamsoak.billet.JustWelded;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.billet.file.ToRecord;
import seamsoak.data.JsonWriter;
import seamsoak.data.Mistake;
import seamsoak.heatlog.Readings;
import seamsoak.heatlog.RealHeat;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairList;
import seamsoak.plan.Advice;
import seamsoak.single.Decarburization;
import seamsoak.single.HeatRemark;
import seamsoak.single.Migration;
import seamsoak.single.SteelReport;
import seamsoak.state.HeatRisk;
import seamsoak.state.StageReport;
import seamsoak.steel.Steel;
import seamsoak.trace.Trace;
import seamsoak.unit.UnitSystem;
import seamsoak.words.HeatWords;
import seamsoak.words.SingleWords;
import seamsoak.words.told.Statement;
import seamsoak.words.told.SteelTold;
import seamsoak.words.told.WorkTold;

/** Answers as JSON: one object whose first members say which schema and command it is. */
public final class JsonReport {
  private static final String SCHEMA = "seamsoak/2";

  private JsonReport() {}

  /** A steel in the list of them. */
  private record Listed(String id, String designation, String category, double carbonPct) {}

  public static String steels(List<Steel> steels, Trace sources) {
    List<Listed> listed =
        steels.stream()
            .map(s -> new Listed(s.id(), s.designation(), s.category(), s.analysis().carbon()))
            .toList();
    return write("steels", Map.of("steels", listed), sources);
  }

  public static String steel(SteelReport steel, Trace sources) {
    return write("steels", SteelTold.members(steel), sources);
  }

  public static String migrate(Migration migration, List<HeatRemark> remarks, Trace sources) {
    return remarked("migrate", migration, remarks, sources);
  }

  public static String decarb(Decarburization skin, List<HeatRemark> remarks, Trace sources) {
    return remarked("decarb", skin, remarks, sources);
  }

  /** Where the page was opened. */
  public static String page(String address, String link) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("address", address);
    all.put("link", link);
    return write("page", all, Trace.NONE);
  }

  /** A real heat. */
  public static String heat(RealHeat heat, List<String> files, Trace sources) {
    HeatWords words = new HeatWords(UnitSystem.METRIC);
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("log", heat.log().file());
    all.put("sha256", heat.log().sha256());
    all.put("column", heat.log().column());
    all.put("scale", heat.log().scale());
    all.put("steel", heat.query().steel().id());
    all.put("tip", heat.query().tip());
    all.put("couple", heat.couple().written());
    all.put("plannedC", heat.plannedC());
    all.put("creditMinutes", heat.credit().minutes());
    all.put("creditLow", heat.credit().low());
    all.put("creditHigh", heat.credit().high());
    all.put("gapMinutes", heat.credit().gapMinutes());
    all.put("doubts", heat.credit().doubts());
    all.put("startC", heat.startC());
    all.put("hotMinutes", heat.hotMinutes());
    all.put("peakC", heat.peakC());
    all.put("edge", heat.face().map(Decarburization::edge));
    all.put("metalLossMm", heat.face().map(Decarburization::metalLossMm));
    all.put("skinMm", heat.face().map(f -> f.depthMm().to90Pct()));
    all.put("grainAstm", heat.grainAstm());
    all.put("loadedMinute", heat.curve().startMinute());
    all.put("outMinute", heat.curve().endMinute());
    all.put("curve", heat.curve().points());
    all.put("gaps", heat.curve().gaps());
    all.put("piece", heat.piece());
    for (Readings.Why why : Readings.Why.values()) {
      all.put(LEFT_OUT.get(why), heat.in().count(why));
    }
    all.put("eventRows", heat.log().events());
    all.put("taken", words.taken(heat));
    all.put("takenKinds", heat.taken());
    all.put("remarks", words.remarks(heat));
    all.put("files", files);
    return write("heat", all, sources);
  }

  private static final Map<Readings.Why, String> LEFT_OUT =
      Map.of(
          Readings.Why.SPIKE, "spikes",
          Readings.Why.OPEN, "openReadings",
          Readings.Why.BEYOND_RANGE, "beyondRange");

  private static String remarked(
      String command, Record answer, List<HeatRemark> remarks, Trace sources) {
    Map<String, Object> all = JsonWriter.members(answer);
    all.put("remarks", remarks.stream().map(new SingleWords(UnitSystem.METRIC)::remark).toList());
    return write(command, all, sources);
  }

  public static String pair(PairAdvice pair, Trace sources) {
    return write("pair", Statement.members(pair), sources);
  }

  /** Pairs in a list, and the same as a matrix of letters where that is what was asked for. */
  public static String pairs(PairList list, List<String> files, Trace sources) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("steels", list.matrix().steels());
    all.put("pairs", list.pairs());
    all.put("files", files);
    return write("pairs", all, sources);
  }

  public static String soak(Advice advice, Trace sources) {
    Map<String, Object> soak = Statement.members(advice.soak());
    soak.put("history", history(advice));
    return about(advice, "soak", soak, sources);
  }

  public static String schedule(Advice advice, Trace sources) {
    return about(advice, "schedule", Statement.members(advice.schedule()), sources);
  }

  /** Of two steels, and what they are taken for. */
  public static String treatment(Advice advice, JustWelded taken, Trace sources) {
    Map<String, Object> all = new LinkedHashMap<>(Statement.members(advice.schedule()));
    Map<String, Object> as = new LinkedHashMap<>();
    as.put("layers", taken.count());
    as.put("thicknessMm", taken.thickness().millimetres());
    as.put("widthMm", taken.width().millimetres());
    as.put("weldC", taken.weld().celsius());
    as.put("weldMinutes", JustWelded.HOLD.minutes());
    all.put("taken", as);
    return about(advice, "schedule", all, sources);
  }

  /**
   * @param files what was written beside it
   */
  public static String plan(Advice advice, List<String> files, Trace sources) {
    Map<String, Object> all = new LinkedHashMap<>(Statement.members(advice));
    all.remove("work");
    all.put(
        "faces",
        advice.faces().stream().map(f -> new FaceTold(f, UnitSystem.METRIC).members()).toList());
    advice.work().ifPresent(w -> all.putAll(WorkTold.members(w)));
    all.put("history", history(advice));
    all.put("files", files);
    return write("plan", all, sources);
  }

  /**
   * What was written into a billet file, and where the work stands by its steps.
   *
   * @param later what is planned and can no longer be done
   */
  public static String recorded(ToRecord what, List<Step> steps, List<Mistake> later) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("recorded", new RecordText(steps, UnitSystem.METRIC).members(what));
    all.put("now", now(steps));
    all.put("remarks", later.stream().map(JsonReport::cannotBeDone).toList());
    return write("record", all, Trace.NONE);
  }

  private static Map<String, Object> cannotBeDone(Mistake later) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("kind", "cannot_be_done");
    told.put("field", later.field());
    told.put("sentence", later.said());
    return told;
  }

  /** What is written in a billet file no more. */
  public static String takenBack(String what, List<Step> steps) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("takenBack", what);
    all.put("now", now(steps));
    return write("record", all, Trace.NONE);
  }

  private static Map<String, Object> now(List<Step> steps) {
    return Now.of(steps).map(now -> WorkTold.now(now, now.left(steps))).orElse(null);
  }

  /** The billet after each step; what the step does goes by the name it has in the file. */
  private static List<Map<String, Object>> history(Advice advice) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (StageReport stage : advice.history()) {
      Map<String, Object> told = new LinkedHashMap<>();
      Statement.members(stage).forEach((k, v) -> told.put(k.equals("kind") ? "do" : k, v));
      all.add(told);
    }
    return all;
  }

  /** What is the matter with heats of the billet's own, step by step. */
  static List<Map<String, Object>> heats(List<StageReport> history) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (StageReport stage : history) {
      for (HeatRisk risk : stage.heats()) {
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("step", stage.step());
        Statement.put(told, "says", risk);
        told.put("done", risk.done());
        all.add(told);
      }
    }
    return all;
  }

  /** A part of an advice, with what must be known to read it. */
  private static String about(
      Advice advice, String command, Map<String, Object> part, Trace sources) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("billet", advice.billet());
    all.put("steels", advice.steels());
    all.putAll(part);
    advice.work().ifPresent(w -> all.putAll(WorkTold.members(w)));
    Statement.put(all, "hardStops", advice.hardStops());
    all.put("heats", heats(advice.history()));
    Statement.put(all, "defaults", advice.defaults());
    return write(command, all, sources);
  }

  static String write(String command, Map<String, ?> members, Trace sources) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("schema", SCHEMA);
    all.put("command", command);
    all.putAll(members);
    if (!sources.entries().isEmpty()) {
      all.put("sources", sources.entries());
    }
    return JsonWriter.write(all, Statement::members);
  }
}
