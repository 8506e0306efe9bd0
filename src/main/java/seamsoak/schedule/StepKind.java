package seamsoak.schedule;

import java.util.List;
import java.util.function.Function;
import seamsoak.safety.CautionStep;
import seamsoak.steel.HeatTreatment;
import seamsoak.steel.TemperatureRange;

/** The kinds of steps that a schedule has. */
public enum StepKind {
  COOL_DOWN("cool-down", CautionStep.COOL),
  SOAK("soak", CautionStep.SOAK),
  NORMALIZE("normalize", CautionStep.NORMALIZE, h -> h.normalize().stream().toList()),
  REFINE("refine", CautionStep.REFINE),
  ANNEAL("anneal", CautionStep.ANNEAL, h -> h.anneal().stream().toList()),
  GRIND("grind", CautionStep.GRIND),
  TEST_ETCH("test etch", CautionStep.ETCH),
  STRESS_RELIEF("stress relief", CautionStep.ANNEAL),
  PRE_HEAT("pre-heat", CautionStep.HARDEN),
  HARDEN("harden", CautionStep.HARDEN, h -> h.harden().stream().toList()),
  SUB_ZERO("sub-zero", CautionStep.COOL),
  TEMPER("temper", CautionStep.TEMPER, HeatTreatment::tempers);

  private final String word;
  private final CautionStep cautionStep;
  private final Function<HeatTreatment, List<TemperatureRange>> published;

  StepKind(
      String word,
      CautionStep cautionStep,
      Function<HeatTreatment, List<TemperatureRange>> published) {
    this.word = word;
    this.cautionStep = cautionStep;
    this.published = published;
  }

  /** No sheet prints a range for it. */
  StepKind(String word, CautionStep cautionStep) {
    this(word, cautionStep, sheet -> List.of());
  }

  public String word() {
    return word;
  }

  /** The step that cautions know it by. */
  CautionStep cautionStep() {
    return cautionStep;
  }

  /** The ranges that a steel's sheet prints for it. */
  List<TemperatureRange> published(HeatTreatment sheet) {
    return published.apply(sheet);
  }
}
