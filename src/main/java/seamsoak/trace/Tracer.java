package seamsoak.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Exposure;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.carbon.LineVisibility;
import seamsoak.heatlog.LogSettings;
import seamsoak.heatlog.RealHeat;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairLimits;
import seamsoak.plan.Advice;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.critical.Criticals;
import seamsoak.property.forging.ForgingRule;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.single.Diffusivities;
import seamsoak.single.SteelReport;
import seamsoak.soak.Histories;
import seamsoak.source.SourceTable;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.trace.TraceEntries.Material;
import seamsoak.trace.TraceEntries.Moment;

/**
 * Which numbers each answer uses: told here and nowhere else. A test changes all that an answer
 * does not name and sees that it does not sway.
 */
public final class Tracer {
  private final Correlations k;
  private final SteelTable table;
  private final SourceTable sources;

  public Tracer(Correlations correlations, SteelTable steels, SourceTable sources) {
    this.k = correlations;
    this.table = steels;
    this.sources = sources;
  }

  /** Of the list of steels: their carbon. */
  public Trace ofSteels(List<Steel> steels) {
    TraceEntries all = entries();
    steels.forEach(s -> all.analysis(s));
    return all.trace();
  }

  /** Of one steel's report, in which every formula stands. */
  public Trace ofSteel(Steel steel, SteelReport report) {
    TraceEntries all = entries();
    Composition austenite = steel.analysis().with(Element.C, report.dissolvedCarbonPct());
    List<Material> bulk = List.of(Material.of(steel));
    List<Material> dissolved = List.of(new Material(steel.id(), austenite));
    Criticals c = k.critical();
    ForgingRule rule = k.forging().rule();
    all.analysis(steel);
    all.temperatures(steel, "published temperatures", "");
    metals(all).phaseLines(bulk);
    all.use(bulk, k.hardening().window());
    metals(all).dissolved(bulk);
    report.blade().ifPresent(b -> metals(all).alone(dissolved));
    Stream.of(c.lower(), c.upper()).flatMap(List::stream).forEach(f -> all.use(bulk, f));
    Stream.of(c.martensiteStart(), c.bainiteStart())
        .flatMap(List::stream)
        .forEach(f -> all.use(dissolved, f));
    metals(all).forging(List.of(steel));
    all.use(bulk, rule.highestForging(), rule.safeForging());
    List<Moment> hot = compared(Diffusivities.AUSTENITE_CELSIUS);
    k.phases().austeniteDiffusivities().forEach(d -> all.use(bulk, hot, d));
    List<Moment> cooler = compared(Diffusivities.FERRITE_CELSIUS);
    k.phases().ferriteDiffusivities().forEach(d -> all.use(bulk, cooler, d));
    all.setting("bands-of-a-steel", "%s", SteelReport.bands());
    return all.trace();
  }

  private static List<Moment> compared(double[] celsius) {
    return Arrays.stream(celsius).mapToObj(c -> new Moment("the comparison", c)).toList();
  }

  /** Of two steels side by side, and of carbon between them. */
  public Trace ofPair(List<Steel> steels, PairAdvice advice, PairLimits limits) {
    double welding = advice.how().map(PairAdvice.How::weldingC).orElse(0.0);
    double normalizing =
        advice.carbon().stream()
            .flatMap(c -> c.heats().stream())
            .mapToDouble(PairAdvice.At::temperatureC)
            .min()
            .orElse(welding);
    double coldest = Math.min(normalizing, Shop.DULL_CELSIUS);
    return ofPairs(steels, limits, new Moment("rise to welding or normalizing", coldest), welding);
  }

  /** Of many steels, each with every other. */
  public Trace ofPairs(List<Steel> steels, PairLimits limits) {
    double welding = k.mechanics().welding().usualCelsius();
    return ofPairs(steels, limits, new Moment("soaking", 1100), welding);
  }

  private Trace ofPairs(List<Steel> steels, PairLimits limits, Moment coldest, double welding) {
    TraceEntries all = entries();
    PairTrace pairs = new PairTrace(k, all);
    pairs.checks(steels, coldest, new Moment("welding", welding));
    pairs.limits(limits);
    return all.trace();
  }

  /** Of carbon across a seam held at one temperature. */
  public Trace ofMigration(List<Steel> steels, double celsius) {
    return held(steels, celsius).trace();
  }

  /** Of the skin after one heat at one temperature. */
  public Trace ofDecarb(Steel steel, double celsius, Exposure exposure) {
    TraceEntries all = held(List.of(steel), celsius);
    metals(all).surface(List.of(new Moment("the hold", celsius)));
    if (exposure == Exposure.COVERED) {
      metals(all).coveredFaces();
    }
    return all.trace();
  }

  /** Of a real heat: carbon, face and grain from its coldest moment that counts to its hottest. */
  public Trace ofHeat(RealHeat heat, LogSettings settings) {
    TraceEntries all = entries();
    new HeatTrace(k, all).heat(heat, settings);
    return all.trace();
  }

  /** Held at one temperature from the start, with the remarks on such a heat. */
  private TraceEntries held(List<Steel> steels, double celsius) {
    TraceEntries all = entries();
    Moment hold = new Moment("the hold", celsius);
    steels.forEach(s -> all.analysis(s));
    metals(all).carbon(steels.stream().map(Material::of).toList(), hold, hold);
    metals(all).burning(steels);
    return all;
  }

  /** Of a billet's history, its lines and the soak that clears them. */
  public Trace ofSoak(Billet billet, Advice advice) {
    return ofWalkAndSoak(billet, advice).trace();
  }

  /** Of the schedule, and with it of all that a plan says. */
  public Trace ofSchedule(Billet billet, Advice advice) {
    TraceEntries all = ofWalkAndSoak(billet, advice);
    List<Steel> stack = stackSteels(billet);
    List<Material> byThen = new ArrayList<>();
    for (ScheduleAdvice.CriticalTemperatures c : advice.schedule().critical()) {
      stack.stream()
          .filter(s -> s.id().equals(c.steel()))
          .map(s -> new Material(s.id(), s.analysis().with(Element.C, c.carbonPct())))
          .forEach(byThen::add);
    }
    metals(all).blade(byThen, List.of(hottest(billet, advice)));
    stack.forEach(
        s -> all.temperatures(s, "published heat treatment", "anneal", "harden", "temper"));
    return all.trace();
  }

  private TraceEntries ofWalkAndSoak(Billet billet, Advice advice) {
    TraceEntries all = entries();
    Moment coldest = new Moment("rise and cooling", QuenchedSteel.ROOM_CELSIUS);
    Moment hottest = hottest(billet, advice);
    List<Moment> fire = List.of(coldest, hottest);
    List<Steel> stack = stackSteels(billet);
    Set<Steel> every = new LinkedHashSet<>(stack);
    every.addAll(jackets(billet));
    Material body =
        new Material(
            stack.size() > 1 ? "the body" : stack.get(0).id(),
            new Shop(k, Assumptions.USUAL, Resolution.SAMPLE).bodyAnalysis(billet.stack()));
    List<Material> metals = new ArrayList<>(every.stream().map(Material::of).toList());
    if (stack.size() > 1) {
      metals.add(body);
    }
    every.forEach(s -> all.analysis(s, "C_min_pct", "C_max_pct"));
    stack.forEach(s -> all.temperatures(s, "published temperatures", "forge_start", "normalize"));
    MetalTrace metal = metals(all);
    metal.carbon(metals, coldest, hottest);
    metal.surface(fire);
    all.use(List.of(), fire, k.forging().ironScaling());
    all.use(List.of(), cooling(billet, advice), k.sections().airCooling(), k.sections().steel());
    metal.forging(stack);
    all.use(List.of(body), fire, k.forging().grainGrowth(), k.forging().grainNumber());
    metal.hardening(stack.stream().map(Material::of).toList());
    if (billet.covered().isEmpty()) {
      metal.coveredFaces();
    }
    settings(all, billet);
    return all;
  }

  private static void settings(TraceEntries all, Billet billet) {
    all.setting(
        "visible-line",
        "when a line shows: where carbon seen over 0.06 mm is %.2f wt%% short of that over %.0f"
            + " mm around it, on the face",
        billet.visible().dipTaken().value(),
        1e3 * LineVisibility.USUAL.broadMetres());
    all.setting(
        "possible-histories",
        "the band: one sigma of the speed of carbon %.0f %%, of temperature %.0f C, of times %.0f"
            + " %%, of grinding %.2f mm; evenly spread: covered share %.1f to %.1f, visible dip"
            + " %.1f to %.1f of its setting, carbon over the grade's limits, scaling from steel to"
            + " iron, breadth that the eye compares %.1f to %.1f mm",
        100 * Histories.MOBILITY_SIGMA,
        Histories.KELVIN_SIGMA,
        100 * Histories.TIME_SIGMA,
        1e3 * Histories.GRINDING_SIGMA_METRES,
        Histories.LEAST_COVERED,
        Histories.MOST_COVERED,
        Histories.LEAST_DIP,
        Histories.MOST_DIP,
        1e3 * Histories.LEAST_BROAD_METRES,
        1e3 * Histories.MOST_BROAD_METRES);
    all.setting(
        "heats",
        "a heat rises from %.0f C, cooling is followed to %.0f C",
        Shop.DULL_CELSIUS,
        Shop.BLACK_CELSIUS);
    all.margins();
  }

  private static List<Moment> cooling(Billet billet, Advice advice) {
    Stream<Moment> segments =
        advice.schedule().segments().stream()
            .filter(s -> s.kind() == ScheduleAdvice.Segment.Kind.COOL)
            .map(s -> new Moment(s.step().words(), s.fromC()));
    Stream<Moment> steps = heats(billet.steps().stream().filter(Step.Treat.class::isInstance));
    return Stream.of(Stream.of(new Moment("black heat", Shop.BLACK_CELSIUS)), segments, steps)
        .flatMap(s -> s)
        .toList();
  }

  /** The hottest moment of the history and of the soaks told of. */
  private static Moment hottest(Billet billet, Advice advice) {
    Stream<Moment> soaks =
        advice.soak().options().stream()
            .map(o -> new Moment("the hottest soak listed", o.temperatureC()));
    Stream<Moment> segments =
        advice.schedule().segments().stream().map(s -> new Moment(s.step().words(), s.toC()));
    return Stream.of(heats(billet.steps().stream()), soaks, segments)
        .flatMap(s -> s)
        .reduce(new Moment("dull heat", Shop.DULL_CELSIUS), Moment::orHotter);
  }

  private static Stream<Moment> heats(Stream<Step> steps) {
    return steps.flatMap(
        s -> s.heats().stream().map(h -> new Moment(s.title(), h.hottest().celsius())));
  }

  private static List<Steel> stackSteels(Billet billet) {
    return billet.stack().steels().stream().distinct().toList();
  }

  private static List<Steel> jackets(Billet billet) {
    return billet.steps().stream()
        .flatMap(s -> s instanceof Step.Tile t ? t.jacket().stream() : Stream.empty())
        .map(j -> j.steel())
        .toList();
  }

  private MetalTrace metals(TraceEntries all) {
    return new MetalTrace(k, all);
  }

  private TraceEntries entries() {
    return new TraceEntries(sources, table);
  }
}
