package seamsoak.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Step;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.property.Correlations;
import seamsoak.source.Caution;
import seamsoak.steel.Steel;
import seamsoak.unit.UnitSystem;

/** Puts together everything that is said about a billet. */
public final class PlanAdvisor {
  private final Correlations correlations;
  private final CautionTable cautions;
  private final UnitSystem units;
  private final int samples;

  /**
   * @param samples histories behind the bands
   */
  public PlanAdvisor(
      Correlations correlations, CautionTable cautions, UnitSystem units, int samples) {
    this.correlations = correlations;
    this.cautions = cautions;
    this.units = units;
    this.samples = samples;
  }

  /** Walks, soaks and schedules a billet. */
  public Advice advise(Billet billet, Progress progress) {
    Assumptions usual =
        Assumptions.USUAL
            .withCoveredShare(billet.coveredTaken().share())
            .withVisible(
                billet.visible().dipTaken().value(), billet.visible().widthTaken().metres());
    Shop shop = new Shop(correlations, usual, Resolution.FINE);
    List<Stage> stages = new BilletWalk(shop).walk(billet);
    LineVisibility visibility = SoakSamples.visibility(usual);
    Stage end = stages.get(stages.size() - 1);
    ScheduleAdvisor scheduling = new ScheduleAdvisor(billet, shop, visibility, cautions, units);
    SoakAdvice soak =
        new SoakAdvisor(billet, shop, end, visibility, scheduling, units).advise(samples, progress);
    ScheduleAdvisor.Run run = scheduling.run(end.piece(), soak.recommended());
    return new Advice(
        billet.name(),
        billet.defaults(units),
        history(billet, stages, visibility),
        end.piece().tiles().map(t -> Preform.of(end.piece(), t)),
        soak,
        run.advice(),
        profile(end.piece(), run, visibility),
        hardStops(billet),
        cautions.general().stream().map(Caution::statement).toList());
  }

  private List<StageReport> history(Billet billet, List<Stage> stages, LineVisibility visibility) {
    List<Steel> steels = billet.stack().steels().stream().distinct().toList();
    List<List<String>> said = new StepCautions(cautions, steels).ofHistory(billet);
    return IntStream.range(0, stages.size())
        .mapToObj(i -> StageReport.of(stages.get(i), visibility, said.get(i)))
        .toList();
  }

  private static Optional<SeamProfile> profile(
      Workpiece end, ScheduleAdvisor.Run run, LineVisibility visibility) {
    List<String> names = new ArrayList<>(List.of("before"));
    List<Workpiece> pieces = new ArrayList<>(List.of(end));
    if (run.advice().after().get(0).step().equals("soak")) {
      names.add("after the soak");
      pieces.add(run.pieces().get(0));
    }
    names.add("after the schedule");
    pieces.add(run.pieces().get(run.pieces().size() - 1));
    return SeamProfile.of(names, pieces, visibility.dipPct());
  }

  private static List<String> hardStops(Billet billet) {
    List<String> stops = new ArrayList<>();
    for (Step step : billet.steps()) {
      if (step instanceof Step.Tile t && t.jacket().isPresent()) {
        HardStop.jacket(t.jacket().get().coatingTaken())
            .ifPresent(s -> stops.add(step.title() + ": " + s));
      }
    }
    return stops;
  }
}
