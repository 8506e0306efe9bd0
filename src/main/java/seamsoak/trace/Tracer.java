package seamsoak.trace;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.billet.Billet;
import seamsoak.billet.Exposure;
import seamsoak.billet.Shop;
import seamsoak.heatlog.LogSettings;
import seamsoak.heatlog.RealHeat;
import seamsoak.kiln.KilnAdvisor;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairLimits;
import seamsoak.plan.Advice;
import seamsoak.property.Correlations;
import seamsoak.property.critical.Criticals;
import seamsoak.property.forging.ForgingRule;
import seamsoak.single.Diffusivities;
import seamsoak.single.SteelReport;
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
  private static final Moment SOAKING = new Moment("soaking", 1100);

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
    return ofPairs(steels, limits, SOAKING, welding);
  }

  private Trace ofPairs(List<Steel> steels, PairLimits limits, Moment coldest, double welding) {
    TraceEntries all = entries();
    addPairs(all, steels, limits, coldest, welding);
    return all.trace();
  }

  private void addPairs(
      TraceEntries all, List<Steel> steels, PairLimits limits, Moment coldest, double welding) {
    PairTrace pairs = new PairTrace(k, all);
    pairs.checks(steels, coldest, new Moment("welding", welding));
    pairs.limits(limits);
  }

  /** Of carbon across a seam held at one temperature. */
  public Trace ofMigration(List<Steel> steels, double celsius) {
    return held(steels, celsius).trace();
  }

  /** Of the skin after one heat at one temperature. */
  public Trace ofDecarb(Steel steel, double celsius, Exposure exposure) {
    TraceEntries all = held(List.of(steel), celsius);
    metals(all).face(Material.of(steel), List.of(new Moment("the hold", celsius)));
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

  /** Of a billet's sizes, and of what is said of its heats. */
  public Trace ofCheck(Billet billet, PairLimits limits) {
    TraceEntries all = entries();
    List<Steel> steels = billet.stack().steels().stream().distinct().toList();
    if (steels.size() > 1) {
      addPairs(all, steels, limits, SOAKING, k.mechanics().welding().usualCelsius());
    }
    return new BilletTrace(k, all, billet).ofCheck();
  }

  /** Of a billet's history, its lines and the soak that clears them. */
  public Trace ofSoak(Billet billet, Advice advice) {
    return new BilletTrace(k, entries(), billet).ofSoak(advice);
  }

  /** Of the schedule, and with it of all that a plan says. */
  public Trace ofSchedule(Billet billet, Advice advice) {
    return new BilletTrace(k, entries(), billet).ofSchedule(advice);
  }

  /** Of several schedules, each entry once. */
  public Trace ofSchedules(List<KilnAdvisor.Given> given) {
    return new Trace(
        given.stream()
            .flatMap(g -> ofSchedule(g.billet(), g.advice()).entries().stream())
            .distinct()
            .toList());
  }

  /** Of its face after some of its steps, or after what is advised. */
  public Trace ofFace(Billet billet, Optional<Advice> advice) {
    BilletTrace trace = new BilletTrace(k, entries(), billet);
    return advice.map(trace::ofFace).orElseGet(trace::ofFace);
  }

  private MetalTrace metals(TraceEntries all) {
    return new MetalTrace(k, all);
  }

  private TraceEntries entries() {
    return new TraceEntries(sources, table);
  }
}
