package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Kiln;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Shop;
import seamsoak.billet.Stack;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.heat.HeatCurve;
import seamsoak.property.hardening.QuenchantTable;
import seamsoak.safety.CautionTable;
import seamsoak.safety.StepCautions;
import seamsoak.safety.Stop;
import seamsoak.schedule.demand.Conflict;
import seamsoak.schedule.demand.Guard;
import seamsoak.schedule.demand.HardeningHeat;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.ToCome;
import seamsoak.source.Estimate;
import seamsoak.state.AsCooled;
import seamsoak.state.BathAtHand;
import seamsoak.state.EtchBand;
import seamsoak.state.Grain;
import seamsoak.steel.Steel;

/**
 * The whole treatment after the last weld, from the cool-down to the second temper. Temperatures
 * follow from the carbon each steel has by then; the metal is carried through every step.
 */
public final class ScheduleAdvisor {
  /** Grain of steel as mills deliver it, annealed, ASTM; judgement. */
  private static final double BOUGHT_GRAIN = 8;

  private final Workshop workshop;
  private final List<BathAtHand> baths;
  private final Workpiece start;
  private final boolean hot;
  private final double forgedGrain;
  private final EtchBand etch;

  /**
   * @param end the billet when the last step of its file is done
   */
  public ScheduleAdvisor(Billet billet, Shop shop, CautionTable cautions, Stage end) {
    QuenchantTable quenchants = shop.correlations().hardening().quenchants();
    this.workshop =
        new Workshop(
            billet,
            shop,
            new StepCautions(cautions, billet, quenchants),
            new Grain(shop, billet.stack()));
    this.baths = billet.quenchantsTaken().stream().map(b -> BathAtHand.of(b, quenchants)).toList();
    this.start = end.piece();
    this.hot = end.endKelvin() > Shop.BLACK_KELVIN;
    this.forgedGrain =
        end.lastHeat()
            .map(heat -> workshop.grains().after(heat, 0))
            .orElseGet(() -> workshop.grains().metres(BOUGHT_GRAIN));
    this.etch = new AsCooled(shop, billet.stack(), workshop.grains()).after(end);
  }

  /**
   * A schedule carried out.
   *
   * @param advice what to do and what comes of it
   * @param soaked the metal after the soak, if there is one and the seams were followed
   * @param cycled the metal after normalizing and cycles, if it was followed so far
   * @param hardStops why a step must not be done as planned
   */
  public record Run(
      ScheduleAdvice advice,
      Optional<Etched> soaked,
      Optional<Workpiece> cycled,
      List<Stop> hardStops) {}

  /** A piece and what it shows, etched as it has cooled. */
  public record Etched(Workpiece piece, EtchBand etch) {}

  /** What is to come for the billet as it is, without a soak, and what it shows then. */
  public ToCome toCome() {
    Course fresh = course(start.withInner(ScheduleAdvisor::layers));
    Optional<HardeningHeat> heat = HardeningHeat.of(fresh.steels(), edge());
    Refining refining = Refining.of(fresh, heat, treated());
    Course cycled = new Cycles(fresh).all(refining);
    boolean hardens = fresh.steels().stream().anyMatch(SteelNow::hardens);
    EtchBand annealed =
        hardens
            ? new Softening(cycled, refining.guard(), heat, treated()).anneal().etch()
            : cycled.etch();
    return new ToCome(
        cycled.planned().stream().map(ScheduleStep::curve).toList(),
        etch,
        annealed,
        heat.map(h -> EtchBand.hardened(workshop.shop(), stack(), start, h.celsius()))
            .orElse(annealed));
  }

  private Stack stack() {
    return workshop.billet().stack();
  }

  /** Grain number after a curve, its grains forming anew. */
  public double grain(HeatCurve curve) {
    return workshop.grains().number(curve);
  }

  private Course course(Workpiece piece) {
    return Course.begin(workshop, piece, forgedGrain, etch);
  }

  /** What a soak would undo, and nothing else does. */
  private Treated treated() {
    return Treated.of(workshop.billet().steps());
  }

  private Optional<String> edge() {
    return workshop.billet().blade().cuts().map(Steel::id);
  }

  /** The schedule as far as the soak: what to heed at it, without what becomes of the seams. */
  public Run runToSoak(Optional<SoakAdvice.Recommended> soak) {
    Course course = soaked(soak, start.withInner(ScheduleAdvisor::layers));
    return new Run(
        advice(course.steels(), List.of(), List.of(), Treatment.of(course)),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  private static List<SectionLine> layers(List<SectionLine> inner) {
    return inner.stream().filter(l -> l.kind() == SectionLine.Kind.LAYERS).toList();
  }

  private Course soaked(Optional<SoakAdvice.Recommended> soak, Workpiece piece) {
    Course fresh = course(piece);
    Course cold = hot ? new AfterForging(fresh).coolDown() : fresh;
    return soak.filter(s -> s.minutes() > 0).map(s -> new AfterForging(cold).soak(s)).orElse(cold);
  }

  /** The whole schedule, with a soak where one is given. */
  public Run run(Optional<SoakAdvice.Recommended> soak) {
    Course soaked = soaked(soak, start);
    List<SteelNow> steels = soaked.steels();
    Optional<HardeningHeat> wanted = HardeningHeat.of(steels, edge());
    Treated treated = soak.filter(s -> s.minutes() > 0).isPresent() ? Treated.NOTHING : treated();
    Refining refining = Refining.of(soaked, wanted, treated);
    Optional<HardeningHeat> heat = wanted.map(refining::hardenedNear);
    Guard guard = refining.guard();
    Course cycled = new Cycles(soaked).all(refining);
    Treatment end =
        heat.map(h -> new BladeWork(cycled, guard, h, baths, treated).treatment())
            .orElseGet(
                () ->
                    Treatment.of(
                        steels.stream().anyMatch(SteelNow::hardens)
                            ? BenchWork.groundAndEtched(
                                new Softening(cycled, guard, heat, treated).anneal())
                            : cycled));
    List<Conflict> conflicts = new ArrayList<>(new Conflicts(soaked, refining).all());
    conflicts.addAll(end.conflicts());
    return new Run(
        advice(steels, conflicts, program(end.course()), end),
        end.course().first(StepKind.SOAK).map(d -> new Etched(d.piece(), d.etch())),
        Optional.of(cycled.piece()),
        end.stops());
  }

  private ScheduleAdvice advice(
      List<SteelNow> steels,
      List<Conflict> conflicts,
      List<ScheduleAdvice.ProgramLine> program,
      Treatment end) {
    Course course = end.course();
    return new ScheduleAdvice(
        course.done().stream().flatMap(d -> d.step().segments(d.cautions()).stream()).toList(),
        course.after(),
        steels.stream().map(ScheduleAdvisor::critical).toList(),
        Remarks.of(end),
        course.done().stream().map(d -> d.step().shown(d.cautions())).toList(),
        List.copyOf(conflicts),
        program,
        end.blade(),
        course.planned().stream()
            .filter(s -> !s.legs().isEmpty())
            .map(ScheduleStep::drawn)
            .toList());
  }

  private List<ScheduleAdvice.ProgramLine> program(Course course) {
    Kiln kiln = workshop.billet().equipment().kilnTaken();
    return kiln.there() ? new KilnProgram(kiln).of(course.planned()) : List.of();
  }

  private static CriticalTemperatures critical(SteelNow s) {
    Optional<SteelNow> changes = Optional.of(s).filter(x -> !x.lines().alwaysAustenite());
    Optional<Estimate> magnet = changes.map(SteelNow::magnet);
    return new CriticalTemperatures(
        s.id(),
        s.carbonPct(),
        changes.map(SteelNow::ac1C),
        changes.map(SteelNow::upperC),
        s.upperName(),
        // chromium carbide keeps carbon back at any heat: with all of it dissolved Ms means nothing
        changes
            .filter(x -> !x.beyondFormulas())
            .map(x -> x.k().critical().martensite(x.analysis()).value()),
        magnet.map(Estimate::value),
        magnet.map(Estimate::low),
        magnet.map(Estimate::high));
  }
}
