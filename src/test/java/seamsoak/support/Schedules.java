package seamsoak.support;

import seamsoak.billet.Billet;
import seamsoak.data.DataFolder;
import seamsoak.plan.Advice;
import seamsoak.plan.PlanAdvisor;
import seamsoak.safety.CautionTable;
import seamsoak.state.Progress;

/** Advice on billets written out in tests; few samples, since the bands are not what is tested. */
public final class Schedules {
  private static final String DRAW =
      "{ \"do\": \"draw\", \"thickness\": \"%s\", \"width\": \"40 mm\","
          + " \"heats\": [{ \"at\": \"1050 C\", \"for\": \"3 min\" }] }";

  private Schedules() {}

  public static Advice of(String json) {
    return of(Walks.billet(json));
  }

  public static Advice of(Billet billet) {
    CautionTable cautions = CautionTable.load(DataFolder.packed());
    return new PlanAdvisor(Walks.CORRELATIONS, cautions, 2).advise(billet, Progress.NONE);
  }

  /** A bar forged to a thickness, and further parts of its file, each beginning with a comma. */
  public static Advice bar(String steel, String thickness, String more) {
    return layers("\"" + steel + "\"", 1, "\"30 mm\"", thickness, more);
  }

  /** A stack welded and forged to a thickness. */
  public static Advice stack(String steels, int layers, String thickness, String more) {
    return layers(steels, layers, "\"4 mm\"", thickness, more);
  }

  private static Advice layers(
      String steels, int layers, String each, String thickness, String more) {
    String weld =
        layers == 1
            ? ""
            : "{ \"do\": \"weld\", \"heats\": [{ \"at\": \"1150 C\", \"for\": \"3 min\" }] }, ";
    return of(
        "{ \"stack\": { \"layers\": "
            + layers
            + ", \"steels\": ["
            + steels
            + "], \"thickness\": "
            + each
            + ", \"width\": \"40 mm\", \"length\": \"120 mm\" }, \"steps\": [ "
            + weld
            + String.format(DRAW, thickness)
            + " ]"
            + more
            + " }");
  }
}
