package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.Equipment;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.Section;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.QuenchantTable;
import seamsoak.safety.CautionTable;
import seamsoak.safety.HardStop;
import seamsoak.safety.StepCautions;
import seamsoak.safety.Stop;
import seamsoak.schedule.ScheduleAdvice.Outcome;
import seamsoak.schedule.ScheduleAdvice.Quenched;
import seamsoak.soak.SoakAdvice;
import seamsoak.state.BathAtHand;
import seamsoak.steel.Steel;
import seamsoak.unit.UnitSystem;

/**
 * The whole treatment after the last weld, from the cool-down to the second temper. Temperatures
 * follow from the carbon each steel has by then; the metal is carried through every step.
 */
public final class ScheduleAdvisor {
  private final Billet billet;
  private final Shop shop;
  private final LineVisibility visibility;
  private final StepCautions cautions;
  private final UnitSystem units;
  private final List<BathAtHand> baths;
  private final Grain grains;
  private final Workpiece start;
  private final boolean hot;
  private final double forgedGrain;
  private List<HeatCurve> cycles;

  /**
   * @param end the billet when the last step of its file is done
   */
  public ScheduleAdvisor(
      Billet billet,
      Shop shop,
      LineVisibility visibility,
      CautionTable cautions,
      UnitSystem units,
      Stage end) {
    QuenchantTable quenchants = shop.correlations().hardening().quenchants();
    this.billet = billet;
    this.shop = shop;
    this.visibility = visibility;
    this.cautions = new StepCautions(cautions, billet, quenchants);
    this.units = units;
    this.baths = billet.quenchantsTaken().stream().map(b -> BathAtHand.of(b, quenchants)).toList();
    this.grains = new Grain(shop, billet.stack());
    this.start = end.piece();
    this.hot = end.endKelvin() > Shop.BLACK_KELVIN;
    this.forgedGrain = grains.after(end.lastHeat().orElse(new HeatCurve(List.of())), 0);
  }

  /** Where its temperatures and times lie, in words. */
  public static String margins() {
    return String.format(
        Locale.ROOT,
        "the schedule: normalize %.0f C above the highest Ac3 or Accm, up to %d cycles down to the"
            + " hardening heat until the grain is ASTM %.0f, within the published ranges that the"
            + " steels share; %s; %s",
        Cycles.NORMALIZE_ABOVE,
        Cycles.MOST_CYCLES,
        Cycles.FINE_ENOUGH,
        Grain.words(),
        Heats.rises());
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
      Optional<Workpiece> soaked,
      Optional<Workpiece> cycled,
      List<Stop> hardStops) {}

  /** The curves of normalizing and cycles for the billet as it is, without a soak. */
  public List<HeatCurve> cycles() {
    if (cycles == null) {
      cycles = cyclesOf(course(start));
    }
    return cycles;
  }

  private List<HeatCurve> cyclesOf(Course course) {
    List<SteelNow> steels = course.steels();
    double normalize = Cycles.normalizeCelsius(steels);
    Guard guard = guard(course, normalize);
    return guard.way() == Guard.Way.ANNEAL_ONLY
        ? List.of()
        : new Cycles(course)
            .curves(guard, normalize, last(HardeningHeat.of(steels, edge()), normalize));
  }

  /** Grain number after a curve, its grains forming anew. */
  public double grain(HeatCurve curve) {
    return grains.number(curve);
  }

  private Course course(Workpiece piece) {
    return new Course(billet, shop, visibility, cautions, units, piece, forgedGrain);
  }

  private static Guard guard(Course course, double celsius) {
    return Guard.of(course.steels(), course.heats().section(), celsius, course.grainNumber());
  }

  /**
   * The last cycle: the hardening heat, or a little cooler than the first where nothing hardens.
   */
  private static double last(Optional<HardeningHeat> heat, double normalize) {
    return heat.map(h -> Math.min(normalize, h.celsius())).orElse(normalize - 20);
  }

  private Optional<String> edge() {
    return billet.blade().edge().map(Steel::id);
  }

  /** The schedule as far as the soak: what to heed at it, without what becomes of the seams. */
  public Run runToSoak(Optional<SoakAdvice.Recommended> soak) {
    Course course = soaked(soak, start.withInner(ScheduleAdvisor::layers));
    return new Run(
        advice(course, course.steels(), Optional.empty(), List.of(), List.of(), Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  private static List<SectionLine> layers(List<SectionLine> inner) {
    return inner.stream().filter(l -> l.kind() == SectionLine.Kind.LAYERS).toList();
  }

  private Course soaked(Optional<SoakAdvice.Recommended> soak, Workpiece piece) {
    Course course = course(piece);
    AfterForging first = new AfterForging(course);
    if (hot) {
      first.coolDown();
    }
    soak.filter(s -> s.minutes() > 0).ifPresent(first::soak);
    return course;
  }

  /** The whole schedule, with a soak where one is given. */
  public Run run(Optional<SoakAdvice.Recommended> soak) {
    Course course = soaked(soak, start);
    List<SteelNow> steels = course.steels();
    double normalize = Cycles.normalizeCelsius(steels);
    Guard guard = guard(course, normalize);
    List<Conflict> conflicts = new ArrayList<>(new Conflicts(course, guard).all());
    Optional<HardeningHeat> heat = HardeningHeat.of(steels, edge());
    Cycles before = new Cycles(course);
    if (!guard.slow()) {
      before.normalize(guard, normalize);
    }
    if (guard.way() != Guard.Way.ANNEAL_ONLY) {
      before.refine(guard, normalize, last(heat, normalize));
    }
    Workpiece cycled = course.piece();
    List<Stop> stops = new ArrayList<>();
    Optional<Softening.Kind> anneal =
        steels.stream().anyMatch(SteelNow::hardens)
            ? Optional.of(new Softening(course).anneal(guard))
            : Optional.empty();
    Optional<Outcome> blade =
        heat.map(h -> blade(course, anneal.orElseThrow(), h, conflicts, stops));
    if (heat.isEmpty() && anneal.isPresent()) {
      new BenchWork(course).grind();
      new BenchWork(course).testEtch();
    }
    return new Run(
        advice(
            course,
            steels,
            anneal,
            conflicts,
            billet.equipment().kilnTaken().there()
                ? new KilnProgram(billet.equipment().kilnTaken()).of(course.planned())
                : List.of(),
            blade),
        course.after("soak"),
        Optional.of(cycled),
        List.copyOf(stops));
  }

  private ScheduleAdvice advice(
      Course course,
      List<SteelNow> steels,
      Optional<Softening.Kind> anneal,
      List<Conflict> conflicts,
      List<ScheduleAdvice.ProgramLine> program,
      Optional<Outcome> blade) {
    return new ScheduleAdvice(
        course.segments(),
        course.after(),
        steels.stream().map(SteelNow::told).toList(),
        new Remarks(course, anneal, visibility).all(),
        course.steps(),
        List.copyOf(conflicts),
        program,
        blade,
        course.planned().stream()
            .filter(s -> !s.legs().isEmpty())
            .map(ScheduleStep::told)
            .toList());
  }

  /** From the bench to the tempers. */
  private Outcome blade(
      Course course,
      Softening.Kind anneal,
      HardeningHeat heat,
      List<Conflict> conflicts,
      List<Stop> stops) {
    BenchWork bench = new BenchWork(course);
    BenchWork.Section to = BenchWork.section(course);
    if (to.tooThick()) {
      conflicts.add(new Conflict.TooThin(Conflicts.names(course.steels()), to.thicknessMetres()));
    }
    bench.grind();
    bench.testEtch();
    new Softening(course).stressRelief();
    Section section = new Section(to.thicknessMetres(), to.widthMetres());
    List<SteelNow> hardening = heat.windows().stream().map(HardeningHeat.Window::steel).toList();
    double grain =
        grains.number(
            grains.after(
                HeatCurve.riseAndHold(Shop.DULL_KELVIN - 150, heat.celsius() + 273.15, 120, 300),
                course.grainMetres()));
    baths.forEach(b -> HardStop.bath(b).ifPresent(d -> stops.add(new Stop("harden", d))));
    if (course.heats().heater(heat.celsius()) == Heater.SALT
        && billet.equipment().saltTaken() == Equipment.Salt.NITRATE) {
      HardStop.nitrateHeat(heat.celsius()).ifPresent(d -> stops.add(new Stop("harden", d)));
    }
    List<QuenchChoice> choices = QuenchChoice.all(baths, section, hardening, heat.celsius(), grain);
    QuenchChoice quench = QuenchChoice.of(choices);
    Tempering temper =
        new IntoTheBath(course, heat, quench, anneal != Softening.Kind.SUBCRITICAL)
            .run(billet.blade().hardnessTaken().hrc(), grain, stops.stream().findFirst());
    conflicts.addAll(new BladeConflicts(course, heat, quench, temper).all());
    Media media = new Media(shop.correlations(), section, heat.celsius(), grain);
    return outcome(section, heat, quench, temper, media.of(choices, quench));
  }

  private static Outcome outcome(
      Section section,
      HardeningHeat heat,
      QuenchChoice quench,
      Tempering temper,
      List<ScheduleAdvice.Medium> media) {
    double room = QuenchedSteel.ROOM_CELSIUS;
    return new Outcome(
        section.thicknessMetres() * 1e3,
        section.widthMetres() * 1e3,
        heat.edge().id(),
        heat.celsius(),
        quench.quenchant().id(),
        quench.quenchant().name(),
        quench.steels().stream()
            .map(
                t ->
                    new Quenched(
                        t.steel().id(),
                        t.austenite().austenite().carbon(),
                        t.austenite().msCelsius().value(),
                        100 * t.austenite().retainedShare(room),
                        t.result().faceHrc().value(),
                        t.result().coreHrc().value(),
                        t.austenite().idealDiameterMetres() * 1e3,
                        t.result().neededMetres() * 1e3,
                        t.allowsSeconds(),
                        t.result().coreSeconds8to5(),
                        t.result().greatestDifferenceKelvin(),
                        t.middle(),
                        temper.quenchedHrc(t.steel()),
                        temper.hrc(t.steel())))
            .toList(),
        media);
  }
}
