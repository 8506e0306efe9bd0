package seamsoak.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.data.Mistake;
import seamsoak.pairing.PairAdvice;
import seamsoak.plan.BilletCheck;
import seamsoak.state.StageReport;
import seamsoak.trace.Trace;
import seamsoak.words.told.Statement;

/** What is wrong with a billet file, or what it comes to, as JSON. */
public final class CheckJson {
  private CheckJson() {}

  /**
   * A billet file with what is wrong with it.
   *
   * @param check what it comes to, as far as it could be read and walked
   */
  public static String of(
      List<Mistake> faults, Optional<BilletCheck> check, List<PairAdvice> pairs, Trace sources) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("billet", check.map(BilletCheck::billet));
    all.put("faults", faults.stream().map(CheckJson::fault).toList());
    all.put(
        "sizes",
        check.map(c -> c.history().stream().map(CheckJson::size).toList()).orElse(List.of()));
    Statement.put(all, "hardStops", check.map(BilletCheck::hardStops).orElse(List.of()));
    all.put("heats", JsonReport.heats(check.map(BilletCheck::history).orElse(List.of())));
    Statement.put(all, "assumed", check.map(BilletCheck::assumed).orElse(List.of()));
    Statement.put(all, "oldWords", check.map(BilletCheck::oldWords).orElse(List.of()));
    all.put("pairs", pairs.stream().map(CheckJson::pair).toList());
    return JsonReport.write("check", all, sources);
  }

  private static Map<String, Object> pair(PairAdvice pair) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("first", pair.first());
    told.put("second", pair.second());
    told.put("rating", pair.rating().word());
    return told;
  }

  private static Map<String, Object> fault(Mistake mistake) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("file", mistake.place().file());
    told.put("line", known(mistake.place().line()));
    told.put("column", known(mistake.place().column()));
    told.put("field", mistake.field().isEmpty() ? Optional.empty() : Optional.of(mistake.field()));
    told.put("found", mistake.found());
    told.put("expected", mistake.expected());
    return told;
  }

  private static Optional<Integer> known(int counted) {
    return counted == 0 ? Optional.empty() : Optional.of(counted);
  }

  private static Map<String, Object> size(StageReport stage) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("step", stage.step());
    told.put("do", stage.kind());
    told.put("lengthMm", stage.lengthMm());
    told.put("widthMm", stage.widthMm());
    told.put("thicknessMm", stage.thicknessMm());
    return told;
  }
}
