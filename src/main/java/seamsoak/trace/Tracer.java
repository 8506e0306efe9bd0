package seamsoak.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Exposure;
import seamsoak.billet.Heat;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.carbon.LineVisibility;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairAdvisor;
import seamsoak.pairing.PairLimits;
import seamsoak.plan.Advice;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.single.Diffusivities;
import seamsoak.single.SteelReport;
import seamsoak.soak.SoakAdvice;
import seamsoak.source.SourceTable;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;
import seamsoak.trace.TraceEntries.Material;
import seamsoak.trace.TraceEntries.Moment;

/**
 * Which numbers each answer uses: told here and nowhere else. A test changes one correlation after
 * the other and sees that none sways an answer without being named.
 */
public final class Tracer {
  private static final List<Moment> NEVER = List.of();
  private static final List<Material> WHATEVER = List.of();

  private static final List<String> NORMALIZING =
      List.of("forge_start_C", "normalize_min_C", "normalize_max_C");
  private static final List<String> TREATING =
      List.of(
          "anneal_min_C",
          "anneal_max_C",
          "harden_min_C",
          "harden_max_C",
          "temper_min_C",
          "temper_max_C");
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
    List<Material> bulk = List.of(Material.of(steel));
    List<Material> dissolved =
        List.of(
            new Material(
                steel.id(), steel.analysis().with(Element.C, report.dissolvedCarbonPct())));
    all.analysis(steel);
    all.temperatures(steel, SteelTable.TEMPERATURES);
    metals(all).phaseLines(bulk);
    all.use(k.hardening().window().correlation(), bulk, NEVER);
    k.critical().lower().forEach(f -> all.use(f.correlation(), bulk, NEVER));
    k.critical().upper().forEach(f -> all.use(f.correlation(), bulk, NEVER));
    k.critical().martensiteStart().forEach(f -> all.use(f.correlation(), dissolved, NEVER));
    k.critical().bainiteStart().forEach(f -> all.use(f.correlation(), dissolved, NEVER));
    metals(all).forging(List.of(steel));
    all.use(k.forging().rule().highestForging().correlation(), bulk, NEVER);
    all.use(k.forging().rule().safeForging().correlation(), bulk, NEVER);
    k.phases()
        .austeniteDiffusivities()
        .forEach(d -> all.use(d.correlation(), bulk, moments(Diffusivities.AUSTENITE_CELSIUS)));
    k.phases()
        .ferriteDiffusivities()
        .forEach(d -> all.use(d.correlation(), WHATEVER, moments(Diffusivities.FERRITE_CELSIUS)));
    all.setting("bands-of-a-steel", SteelReport.bands());
    return all.trace();
  }

  private static List<Moment> moments(double[] celsius) {
    return Arrays.stream(celsius).mapToObj(c -> new Moment("the comparison", c)).toList();
  }

  /** Of two steels side by side, and of carbon between them. */
  public Trace ofPair(List<Steel> steels, PairAdvice advice, PairLimits limits) {
    TraceEntries all = entries();
    double welding = advice.how().map(PairAdvice.How::weldingC).orElse(0.0);
    double normalizing =
        advice.carbon().stream()
            .flatMap(c -> c.heats().stream())
            .mapToDouble(PairAdvice.At::temperatureC)
            .min()
            .orElse(welding);
    double coldest = Math.min(normalizing, Shop.DULL_CELSIUS);
    PairTrace pair = new PairTrace(k, all);
    pair.checks(
        steels,
        new Moment("rise to welding or normalizing", coldest),
        new Moment("welding", welding));
    all.setting("pair", PairAdvisor.settings());
    pair.limits(limits);
    return all.trace();
  }

  /** Of many steels, each with every other. */
  public Trace ofPairs(List<Steel> steels, PairLimits limits) {
    TraceEntries all = entries();
    double welding = k.mechanics().welding().usualCelsius();
    PairTrace pairs = new PairTrace(k, all);
    pairs.checks(steels, new Moment("soaking", 1100), new Moment("welding", welding));
    all.setting("pair", PairAdvisor.settings());
    pairs.limits(limits);
    return all.trace();
  }

  /** Of carbon across a seam held at one temperature. */
  public Trace ofMigration(List<Steel> steels, double celsius) {
    TraceEntries all = entries();
    held(all, steels, celsius);
    return all.trace();
  }

  /** Of the skin after one heat at one temperature. */
  public Trace ofDecarb(Steel steel, double celsius, Exposure exposure) {
    TraceEntries all = entries();
    held(all, List.of(steel), celsius);
    metals(all).surface(List.of(new Moment("the hold", celsius)));
    if (exposure == Exposure.COVERED) {
      metals(all).coveredFaces();
    }
    return all.trace();
  }

  /** Of a billet's history, its lines and the soak that clears them. */
  public Trace ofSoak(Billet billet, Advice advice) {
    return ofWalkAndSoak(billet, advice).trace();
  }

  /** Of the schedule, and with it of all that a plan says. */
  public Trace ofSchedule(Billet billet, Advice advice) {
    TraceEntries all = ofWalkAndSoak(billet, advice);
    List<Material> byThen = new ArrayList<>();
    for (ScheduleAdvice.CriticalTemperatures c : advice.schedule().critical()) {
      stackSteels(billet).stream()
          .filter(s -> s.id().equals(c.steel()))
          .map(s -> new Material(s.id(), s.analysis().with(Element.C, c.carbonPct())))
          .forEach(byThen::add);
    }
    all.use(k.critical().ms().correlation(), byThen, NEVER);
    metals(all).blade(byThen, List.of(hottest(billet, advice)));
    stackSteels(billet).forEach(s -> all.temperatures(s, "published heat treatment", TREATING));
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
    Composition body =
        new Shop(k, Assumptions.USUAL, Resolution.SAMPLE).bodyAnalysis(billet.stack());
    List<Material> metals = new ArrayList<>(every.stream().map(Material::of).toList());
    if (stack.size() > 1) {
      metals.add(new Material("the body", body));
    }
    every.forEach(s -> all.analysis(s, "C_min_pct", "C_max_pct"));
    stack.forEach(s -> all.temperatures(s, NORMALIZING));
    metals(all).carbon(metals, coldest, hottest);
    metals(all).surface(fire);
    all.use(k.forging().ironScaling().correlation(), WHATEVER, fire);
    cooling(all, billet, advice);
    metals(all).forging(stack);
    List<Material> grains =
        List.of(new Material(stack.size() > 1 ? "the body" : stack.get(0).id(), body));
    all.use(k.forging().grainGrowth().correlation(), grains, fire);
    all.use(k.forging().grainNumber().correlation(), grains, NEVER);
    metals(all).hardening(stack.stream().map(Material::of).toList());
    settings(all, billet);
    return all;
  }

  private void settings(TraceEntries all, Billet billet) {
    if (billet.covered().isEmpty()) {
      metals(all).coveredFaces();
    }
    all.setting(
        "visible-line",
        String.format(
            Locale.ROOT,
            "when a line shows: where carbon seen over 0.06 mm is %.2f wt%% short of that over %.0f"
                + " mm around it, on the face",
            billet.visible().dipTaken().value(),
            1e3 * LineVisibility.USUAL.broadMetres()));
    all.possibleHistories();
    all.setting(
        "heats",
        String.format(
            Locale.ROOT,
            "a heat rises from %.0f C, cooling is followed to %.0f C",
            Shop.DULL_CELSIUS,
            Shop.BLACK_CELSIUS));
    all.margins();
  }

  /** Held at one temperature from the start, with the remarks on such a heat. */
  private void held(TraceEntries all, List<Steel> steels, double celsius) {
    Moment hold = new Moment("the hold", celsius);
    steels.forEach(s -> all.analysis(s));
    metals(all).carbon(steels.stream().map(Material::of).toList(), hold, hold);
    metals(all).burning(steels);
  }

  private void cooling(TraceEntries all, Billet billet, Advice advice) {
    List<Moment> moments = new ArrayList<>();
    moments.add(new Moment("black heat", Shop.BLACK_CELSIUS));
    advice.schedule().segments().stream()
        .filter(s -> s.kind() == ScheduleAdvice.Segment.Kind.COOL)
        .forEach(s -> moments.add(new Moment(s.step().words(), s.fromC())));
    for (Step step : billet.steps()) {
      if (step instanceof Step.Soak || step instanceof Step.Normalize) {
        step.heats().forEach(h -> moments.add(new Moment(step.title(), h.at().celsius())));
      }
    }
    all.use(k.sections().airCooling().correlation(), WHATEVER, moments);
    all.use(k.sections().steel().correlation(), WHATEVER, moments);
  }

  /** The hottest moment of the history and of the soaks told of. */
  private static Moment hottest(Billet billet, Advice advice) {
    Moment hottest = new Moment("dull heat", Shop.DULL_CELSIUS);
    for (Step step : billet.steps()) {
      for (Heat h : step.heats()) {
        hottest = hotter(hottest, step.title(), h.at().celsius());
      }
    }
    for (SoakAdvice.SoakOption o : advice.soak().options()) {
      hottest = hotter(hottest, "the hottest soak listed", o.temperatureC());
    }
    for (ScheduleAdvice.Segment s : advice.schedule().segments()) {
      hottest = hotter(hottest, s.step().words(), s.toC());
    }
    return hottest;
  }

  private static Moment hotter(Moment than, String when, double celsius) {
    return celsius > than.celsius() ? new Moment(when, celsius) : than;
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
