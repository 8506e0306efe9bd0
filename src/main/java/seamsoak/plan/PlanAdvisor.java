package seamsoak.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import seamsoak.billet.Assumed;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Now;
import seamsoak.billet.Resolution;
import seamsoak.billet.Seen.Etched;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.data.Faults;
import seamsoak.property.Correlations;
import seamsoak.safety.CautionTable;
import seamsoak.safety.HardStop;
import seamsoak.safety.StepCautions;
import seamsoak.safety.Stop;
import seamsoak.schedule.ScheduleAdvisor;
import seamsoak.soak.Histories;
import seamsoak.soak.SampleWalks;
import seamsoak.soak.Sightings;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakAdvisor;
import seamsoak.soak.SoakNote;
import seamsoak.soak.SoakSamples;
import seamsoak.soak.ToCome;
import seamsoak.source.Caution;
import seamsoak.state.AsCooled;
import seamsoak.state.Etch;
import seamsoak.state.HeatRisk;
import seamsoak.state.Preform;
import seamsoak.state.Progress;
import seamsoak.state.SeamProfile;
import seamsoak.state.SeamProfile.Moment;
import seamsoak.state.StageReport;
import seamsoak.state.WorkReport;
import seamsoak.steel.Steel;

/** Puts together everything that is said about a billet. */
public final class PlanAdvisor {
  /**
   * Histories behind the bands unless others are asked for: from ten places in their sequence the
   * band comes out alike to a tenth.
   */
  public static final int USUAL_SAMPLES = 64;

  /** Where something was seen some count for little; so many times as many are tried at a time. */
  private static final double WHERE_SEEN = 1.25;

  private final Correlations correlations;
  private final CautionTable cautions;
  private final int samples;

  /**
   * @param samples histories behind the bands
   */
  public PlanAdvisor(Correlations correlations, CautionTable cautions, int samples) {
    this.correlations = correlations;
    this.cautions = cautions;
    this.samples = samples;
  }

  /**
   * Walks, soaks and schedules a billet; ends with a {@code CancellationException} soon after
   * nobody waits for it any more.
   */
  public Advice advise(Billet billet, Progress progress) {
    return advise(billet, progress, ScheduleAdvisor::run);
  }

  /**
   * Walks and soaks a billet. Its schedule ends with the soak, and through that only layers and
   * faces are followed, no seams.
   */
  public Advice soak(Billet billet, Progress progress) {
    return advise(billet, progress, ScheduleAdvisor::runToSoak);
  }

  /** Walks and schedules a billet without any soak. */
  public Advice treat(Billet billet, Progress progress) {
    return advise(billet, progress, (scheduling, soak) -> scheduling.run(Optional.empty()));
  }

  /**
   * Walks a billet and no more; what cannot be done goes to the faults, and the walk ends before
   * it.
   */
  public BilletCheck check(Billet billet, Faults faults) {
    Assumptions usual = usual(billet);
    Shop shop = new Shop(correlations, usual, Resolution.FINE);
    List<Stage> stages = new BilletWalk(shop).walk(billet, faults);
    Billet walked = billet.first(stages.size() - 1);
    List<List<HeatRisk>> risks = HeatRisk.ofHistory(walked, stages, shop);
    return new BilletCheck(
        billet.name(),
        history(walked, stages, AsCooled.of(shop, walked.stack()), risks),
        HardStop.history(walked, risks),
        Assumed.of(billet),
        billet.oldWords());
  }

  private static Assumptions usual(Billet billet) {
    return Assumptions.usual(billet.coveredTaken().share());
  }

  private Advice advise(
      Billet billet,
      Progress progress,
      BiFunction<ScheduleAdvisor, Optional<SoakAdvice.Recommended>, ScheduleAdvisor.Run> carry) {
    Assumptions usual = usual(billet);
    // the histories need nothing of the middle estimate: they are walked meanwhile
    SampleWalks walks = walks(billet, usual, 0, progress);
    Basis basis = basis(billet, usual);
    progress.requireWanted();
    return advice(billet, basis, walks, carry, progress);
  }

  /**
   * The same as {@link #advise}, with what the likely case alone says handed over as soon as that
   * is known; the likely case is walked once for both.
   */
  public Advice advise(Billet billet, Progress progress, Consumer<Advice> likely) {
    Basis basis = basis(billet, usual(billet));
    PlanAdvisor alone = new PlanAdvisor(correlations, cautions, 0);
    likely.accept(alone.run(billet, basis, progress));
    return run(billet, basis, progress);
  }

  private Advice run(Billet billet, Basis basis, Progress progress) {
    progress.requireWanted();
    SampleWalks walks = walks(billet, basis.shop.assumptions(), 0, progress);
    return advice(billet, basis, walks, ScheduleAdvisor::run, progress);
  }

  /**
   * @param walks the first of the histories
   */
  private Advice advice(
      Billet billet,
      Basis basis,
      SampleWalks walks,
      BiFunction<ScheduleAdvisor, Optional<SoakAdvice.Recommended>, ScheduleAdvisor.Run> carry,
      Progress progress) {
    Assumptions usual = basis.shop.assumptions();
    Sightings sightings = Sightings.of(billet);
    SoakSamples all =
        SoakSamples.enough(
            walks, from -> walks(billet, usual, from, progress), asked(basis, sightings));
    if (samples > 0) {
      all = all.scaled(basis.soaking.overSamples());
    }
    List<Stage> stages = basis.stages;
    Stage end = basis.end();
    ScheduleAdvisor scheduling = basis.scheduling;
    SoakAdvice soak = basis.soaking.advise(all, seen(sightings, all));
    progress.requireWanted();
    ScheduleAdvisor.Run run = carry.apply(scheduling, soak.recommended());
    List<List<HeatRisk>> risks = HeatRisk.ofHistory(billet, stages, basis.shop);
    List<Stop> stops = new ArrayList<>(HardStop.history(billet, risks));
    stops.addAll(run.hardStops());
    return new Advice(
        billet.name(),
        billet.stack().steels().stream().map(Steel::grade).distinct().toList(),
        Assumed.of(billet),
        work(billet, stages, basis.asCooled),
        history(billet, stages, basis.asCooled, risks),
        end.piece().tiles().map(t -> Preform.of(end.piece(), t)),
        soak,
        run.advice(),
        profile(end.piece(), run, basis.likelyBlade()),
        new Faces(billet, stages, basis.shop, basis.toCome).all(run),
        List.copyOf(stops),
        cautions.general());
  }

  /** As many more of the histories as are asked for. */
  private SampleWalks walks(Billet billet, Assumptions usual, int from, Progress progress) {
    int count = atATime(samples, !Sightings.of(billet).none());
    return SampleWalks.begin(
        billet,
        correlations,
        Histories.around(usual, billet.covered().isPresent(), from, from + count),
        from,
        progress);
  }

  /** How many histories are tried at a time. */
  public static int atATime(int samples, boolean seen) {
    return seen ? (int) (WHERE_SEEN * samples) : samples;
  }

  private SoakSamples.Asked asked(Basis basis, Sightings sightings) {
    return new SoakSamples.Asked(
        sightings,
        basis.stages,
        basis.asCooled,
        basis.toCome,
        basis.soaking.worth(),
        correlations.etching(),
        basis.soaking.nodes());
  }

  private Optional<WorkReport> work(Billet billet, List<Stage> stages, AsCooled asCooled) {
    return Now.of(billet.steps())
        .map(n -> stages.get(n.step().mark().number()).atNow())
        .map(s -> told(s, asCooled, List.of(), List.of()))
        .flatMap(s -> WorkReport.of(billet.steps(), s));
  }

  private List<StageReport> history(
      Billet billet, List<Stage> stages, AsCooled asCooled, List<List<HeatRisk>> risks) {
    List<List<Caution>> said =
        new StepCautions(cautions, billet, correlations.hardening().quenchants()).ofHistory(risks);
    return IntStream.range(0, stages.size())
        .parallel()
        .mapToObj(i -> told(stages.get(i), asCooled, risks.get(i), said.get(i)))
        .toList();
  }

  private StageReport told(
      Stage stage, AsCooled asCooled, List<HeatRisk> risks, List<Caution> said) {
    return StageReport.of(
        stage,
        asCooled.after(stage).at(asCooled.shop().assumptions().ferritePlace()),
        correlations.hardening().asQuenched(),
        risks,
        said);
  }

  /** A billet walked under one set of assumptions, ready to be advised on. */
  private record Basis(
      Shop shop,
      List<Stage> stages,
      AsCooled asCooled,
      ToCome toCome,
      ScheduleAdvisor scheduling,
      SoakAdvisor soaking) {
    Stage end() {
      return stages.get(stages.size() - 1);
    }

    /** What the finished blade shows in the likely case. */
    Etch likelyBlade() {
      return toCome.finished().at(shop.assumptions().ferritePlace());
    }
  }

  private Basis basis(Billet billet, Assumptions assumptions) {
    Shop shop = new Shop(correlations, assumptions, Resolution.FINE);
    List<Stage> stages = new BilletWalk(shop).walk(billet);
    Stage end = stages.get(stages.size() - 1);
    ScheduleAdvisor scheduling = new ScheduleAdvisor(billet, shop, cautions, end);
    ToCome toCome = scheduling.toCome();
    return new Basis(
        shop,
        stages,
        AsCooled.of(shop, billet.stack()),
        toCome,
        scheduling,
        new SoakAdvisor(billet, shop, end, toCome, scheduling::grain));
  }

  /**
   * The shown face after a step of the file.
   *
   * @param step which one, from 1
   * @param etched in which state; as it has cooled unless stated
   */
  public FaceAdvice face(Billet billet, int step, Optional<Etched> etched) {
    Billet first = billet.first(step);
    Basis basis = basis(first, usual(billet));
    return new Faces(first, basis.stages, basis.shop, basis.toCome)
        .before(
            billet.steps().subList(step, billet.steps().size()), etched.orElse(Etched.AS_COOLED));
  }

  /** What comes of what the smith saw. */
  private static Optional<SoakNote> seen(Sightings sightings, SoakSamples all) {
    if (sightings.none()) {
      return Optional.empty();
    }
    return Optional.of(
        all.count() == 0
            ? SoakNote.Plain.SEEN_WITHOUT_HISTORIES
            : new SoakNote.SeenWeighs(
                sightings.all(), all.effective(), all.count(), all.notCarbonPct()));
  }

  private static Optional<SeamProfile> profile(Workpiece end, ScheduleAdvisor.Run run, Etch blade) {
    if (run.cycled().isEmpty()) {
      return Optional.empty();
    }
    List<Moment> moments = new ArrayList<>(List.of(Moment.BEFORE));
    List<Workpiece> pieces = new ArrayList<>(List.of(end));
    run.soaked()
        .ifPresent(
            soaked -> {
              moments.add(Moment.AFTER_SOAK);
              pieces.add(soaked.piece());
            });
    moments.add(Moment.AFTER_SCHEDULE);
    pieces.add(run.cycled().get());
    return SeamProfile.of(moments, pieces, blade);
  }
}
