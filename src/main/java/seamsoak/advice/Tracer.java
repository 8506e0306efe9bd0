package seamsoak.advice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import seamsoak.advice.TraceEntries.Material;
import seamsoak.advice.TraceEntries.Moment;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Exposure;
import seamsoak.billet.Heat;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.property.Correlations;
import seamsoak.property.PhaseLines;
import seamsoak.property.Unary;
import seamsoak.source.SourceTable;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;

/**
 * Which numbers each answer uses: told here and nowhere else. A test changes one correlation after
 * the other and sees that none sways an answer without being named.
 */
public final class Tracer {
  private static final double ZERO_CELSIUS = 273.15;
  private static final List<Moment> NEVER = List.of();
  private static final List<Material> WHATEVER = List.of();

  private static final List<String> NORMALIZING =
      List.of("forge_start_C", "normalize_min_C", "normalize_max_C");
  private static final List<String> PUBLISHED =
      List.of(
          "forge_start_C",
          "forge_stop_C",
          "normalize_min_C",
          "normalize_max_C",
          "anneal_min_C",
          "anneal_max_C",
          "harden_min_C",
          "harden_max_C",
          "temper_min_C",
          "temper_max_C",
          "Ac1_C",
          "Ac3_or_Accm_C",
          "Ms_C");

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
    List<Material> bulk = List.of(material(steel));
    List<Material> dissolved =
        List.of(
            new Material(
                steel.id(), steel.analysis().with(Element.C, report.dissolvedCarbonPct())));
    all.analysis(steel);
    all.temperatures(steel, PUBLISHED);
    phaseLines(all, bulk);
    k.lowerCritical().forEach(f -> all.use(f.correlation(), bulk, NEVER));
    k.upperCritical().forEach(f -> all.use(f.correlation(), bulk, NEVER));
    k.martensiteStart().forEach(f -> all.use(f.correlation(), dissolved, NEVER));
    forging(all, List.of(steel));
    all.use(k.forging().highestForging().correlation(), bulk, NEVER);
    all.use(k.forging().safeForging().correlation(), bulk, NEVER);
    all.setting("bands-of-a-steel", SteelReport.bands(), "C");
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
    surface(all, List.of(new Moment("the hold", celsius)));
    if (exposure == Exposure.COVERED) {
      coveredFaces(all);
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
    all.use(k.vanBohemenMs().correlation(), byThen, NEVER);
    return all.trace();
  }

  private TraceEntries ofWalkAndSoak(Billet billet, Advice advice) {
    TraceEntries all = entries();
    Moment coldest = new Moment("rise and cooling", ScheduleStep.ROOM_KELVIN - ZERO_CELSIUS);
    Moment hottest = hottest(billet, advice);
    List<Moment> fire = List.of(coldest, hottest);
    List<Steel> stack = stackSteels(billet);
    Set<Steel> every = new LinkedHashSet<>(stack);
    every.addAll(jackets(billet));
    Composition body =
        new Shop(k, Assumptions.USUAL, Resolution.SAMPLE).bodyAnalysis(billet.stack());
    List<Material> metals = new ArrayList<>(every.stream().map(Tracer::material).toList());
    if (stack.size() > 1) {
      metals.add(new Material("the body", body));
    }
    every.forEach(s -> all.analysis(s, "C_min_pct", "C_max_pct"));
    stack.forEach(s -> all.temperatures(s, NORMALIZING));
    carbon(all, metals, coldest, hottest);
    surface(all, fire);
    all.use(k.ironScaling().correlation(), WHATEVER, fire);
    cooling(all, billet, advice);
    forging(all, stack);
    List<Material> grains =
        List.of(new Material(stack.size() > 1 ? "the body" : stack.get(0).id(), body));
    all.use(k.grainGrowth().correlation(), grains, fire);
    all.use(k.grainNumber().correlation(), grains, NEVER);
    settings(all, billet);
    return all;
  }

  private void settings(TraceEntries all, Billet billet) {
    if (billet.covered().isEmpty()) {
      coveredFaces(all);
    }
    if (billet.visible().dip().isEmpty() || billet.visible().width().isEmpty()) {
      all.setting(
          "visible-line",
          String.format(
              Locale.ROOT,
              "when a line shows: from %.2f wt%% of carbon missing and %.2f mm in width",
              billet.visible().dipTaken().value(),
              billet.visible().widthTaken().millimetres()),
          "wt% and mm");
    }
    all.setting("possible-histories", "the band: " + Histories.words(), "various");
    all.setting(
        "heats",
        String.format(
            Locale.ROOT,
            "a heat rises from %.0f C, cooling is followed to %.0f C",
            Shop.DULL_KELVIN - ZERO_CELSIUS,
            Shop.BLACK_KELVIN - ZERO_CELSIUS),
        "C");
    all.setting("schedule", ScheduleAdvisor.margins(), "C");
  }

  /** Held at one temperature from the start, with the remarks on such a heat. */
  private void held(TraceEntries all, List<Steel> steels, double celsius) {
    Moment hold = new Moment("the hold", celsius);
    steels.forEach(s -> all.analysis(s));
    carbon(all, steels.stream().map(Tracer::material).toList(), hold, hold);
    burning(all, steels);
  }

  /** Carbon in metals between two temperatures. */
  private void carbon(TraceEntries all, List<Material> metals, Moment coldest, Moment hottest) {
    phaseLines(all, metals);
    for (Material m : metals) {
      PhaseLines lines = new PhaseLines(k, m.analysis());
      double lowestAustenite =
          lines.alwaysAustenite() ? Double.NEGATIVE_INFINITY : lines.a1Celsius();
      if (hottest.celsius() >= lowestAustenite) {
        List<Moment> moments =
            List.of(
                coldest.celsius() >= lowestAustenite
                    ? coldest
                    : new Moment("A1 of " + m.name(), lowestAustenite),
                hottest);
        List<Material> one = List.of(m);
        all.use(k.mobility().correlation(), one, moments);
        all.use(k.activity().iron(), one, moments);
        for (Element e : Element.values()) {
          if (m.analysis().percent(e) > 0) {
            k.activity().of(e).ifPresent(c -> all.use(c, one, moments));
          }
        }
      }
      double highestFerrite = lines.ac3Celsius(0);
      if (!lines.alwaysAustenite() && coldest.celsius() < highestFerrite) {
        List<Moment> moments =
            List.of(
                coldest,
                hottest.celsius() <= highestFerrite
                    ? hottest
                    : new Moment("A3 of " + m.name(), highestFerrite));
        all.use(k.ferriteDiffusivity().correlation(), WHATEVER, moments);
        all.use(k.ferriteActivity().correlation(), WHATEVER, moments);
      }
      if (!lines.alwaysAustenite() && coldest.celsius() < lines.a1Celsius()) {
        all.use(Unary.correlation(), WHATEVER, List.of(coldest));
      }
    }
  }

  private void phaseLines(TraceEntries all, List<Material> metals) {
    all.use(k.ae1().correlation(), metals, NEVER);
    k.ae1().members().forEach(f -> all.use(f.correlation(), metals, NEVER));
    // each line is asked about the carbon on its own side of the eutectoid
    all.use(k.ironCarbon().a3(), metals.stream().filter(m -> !beyondEutectoid(m)).toList(), NEVER);
    all.use(k.ironCarbon().accm(), metals.stream().filter(this::beyondEutectoid).toList(), NEVER);
    all.use(k.andrewsAe3().shift(), metals, NEVER);
    all.use(k.leeLeeAccm().correlation(), metals, NEVER);
    if (metals.stream().anyMatch(m -> m.analysis().percent(Element.NI) > 0)) {
      all.use(PhaseLines.austenitic(), metals, NEVER);
    }
  }

  private boolean beyondEutectoid(Material m) {
    PhaseLines lines = new PhaseLines(k, m.analysis());
    double carbon = m.analysis().carbon();
    return lines.accmCelsius(carbon) > lines.ac3Celsius(carbon);
  }

  private void surface(TraceEntries all, List<Moment> fire) {
    all.use(k.scaledSurface().correlation(), WHATEVER, fire);
    all.use(k.steelScaling().correlation(), WHATEVER, fire);
    all.setting(
        "carbon-monoxide",
        String.format(
            Locale.ROOT,
            "pressure of CO under the scale: %s atm",
            Assumptions.USUAL.carbonMonoxideAtm()),
        "atm");
  }

  private static void coveredFaces(TraceEntries all) {
    all.setting(
        "covered-faces",
        String.format(
            Locale.ROOT,
            "a covered face is reached by the fire %.0f %% as much as an open one",
            100 * Assumptions.USUAL.coveredShare()),
        "%");
  }

  private void cooling(TraceEntries all, Billet billet, Advice advice) {
    List<Moment> moments = new ArrayList<>();
    moments.add(new Moment("black heat", Shop.BLACK_KELVIN - ZERO_CELSIUS));
    advice.schedule().segments().stream()
        .filter(s -> s.kind().equals("cool"))
        .forEach(s -> moments.add(new Moment(s.step(), s.fromC())));
    for (Step step : billet.steps()) {
      if (step instanceof Step.Soak || step instanceof Step.Normalize) {
        step.heats().forEach(h -> moments.add(new Moment(step.title(), h.at().celsius())));
      }
    }
    all.use(k.airCooling().correlation(), WHATEVER, moments);
    all.use(k.steelHeat().correlation(), WHATEVER, moments);
  }

  /** Forging limits, and those above them. */
  private void forging(TraceEntries all, List<Steel> steels) {
    List<Material> unpublished =
        steels.stream()
            .filter(s -> s.heatTreatment().forgeStartC().isEmpty())
            .map(Tracer::material)
            .toList();
    if (!unpublished.isEmpty()) {
      all.use(k.forging().highestForging().correlation(), unpublished, NEVER);
    }
    burning(all, steels);
  }

  private void burning(TraceEntries all, List<Steel> steels) {
    List<Material> metals = steels.stream().map(Tracer::material).toList();
    all.use(k.forging().burning().correlation(), metals, NEVER);
    if (metals.stream().anyMatch(m -> k.forging().isStainless(m.analysis()))) {
      all.use(k.forging().stainless(), metals, NEVER);
    }
    all.use(k.solidus().correlation(), metals, NEVER);
    all.use(k.forging().refusal(), metals, NEVER);
  }

  /** The hottest moment of the history and of the soaks told of. */
  private static Moment hottest(Billet billet, Advice advice) {
    Moment hottest = new Moment("dull heat", Shop.DULL_KELVIN - ZERO_CELSIUS);
    for (Step step : billet.steps()) {
      for (Heat h : step.heats()) {
        hottest = hotter(hottest, step.title(), h.at().celsius());
      }
    }
    for (SoakAdvice.SoakOption o : advice.soak().options()) {
      hottest = hotter(hottest, "the hottest soak listed", o.temperatureC());
    }
    for (ScheduleAdvice.Segment s : advice.schedule().segments()) {
      hottest = hotter(hottest, s.step(), s.toC());
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

  private static Material material(Steel steel) {
    return new Material(steel.id(), steel.analysis());
  }

  private TraceEntries entries() {
    return new TraceEntries(sources, table);
  }
}
