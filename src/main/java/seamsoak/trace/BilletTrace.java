package seamsoak.trace;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.carbon.Eye;
import seamsoak.plan.Advice;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.schedule.CriticalTemperatures;
import seamsoak.schedule.ScheduleAdvice;
import seamsoak.soak.Histories;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.trace.TraceEntries.Material;
import seamsoak.trace.TraceEntries.Moment;

/** What the answers on a billet use. */
record BilletTrace(Correlations k, TraceEntries all, Billet billet) {
  private static final Moment COLDEST = new Moment("rise and cooling", QuenchedSteel.ROOM_CELSIUS);

  /** Of a billet's history, its lines and the soak that clears them. */
  Trace ofSoak(Advice advice) {
    walkAndSoak(advice);
    return all.trace();
  }

  /** Of the schedule, and with it of all that a plan says. */
  Trace ofSchedule(Advice advice) {
    walkAndSoak(advice);
    List<Steel> stack = stackSteels();
    List<Material> byThen = new ArrayList<>();
    for (CriticalTemperatures c : advice.schedule().critical()) {
      stack.stream()
          .filter(s -> s.id().equals(c.steel()))
          .map(s -> new Material(s.id(), s.analysis().with(Element.C, c.carbonPct())))
          .forEach(byThen::add);
    }
    new MetalTrace(k, all).blade(byThen, List.of(hottest(advice)));
    stack.forEach(
        s -> all.temperatures(s, "published heat treatment", "anneal", "harden", "temper"));
    return all.trace();
  }

  /** Of its face as it is after some of its steps. */
  Trace ofFace() {
    Moment hottest = hottest(Stream.empty());
    List<Moment> fire = List.of(COLDEST, hottest);
    List<Material> stack = stackSteels().stream().map(Material::of).toList();
    steels();
    MetalTrace metal = new MetalTrace(k, all);
    metal.carbon(materials(), COLDEST, hottest);
    metal.surface(fire);
    all.use(List.of(), coolingSteps(), k.sections().airCooling(), k.sections().steel());
    all.use(
        List.of(body()),
        fire,
        k.forging().grainGrowth(),
        k.forging().pinning(),
        k.forging().grainNumber());
    metal.hardening(stack);
    metal.etch(stack);
    if (billet.covered().isEmpty()) {
      metal.coveredFaces();
    }
    settings();
    return picture();
  }

  /** The same after the soak or the schedule. */
  Trace ofFace(Advice advice) {
    ofSchedule(advice);
    return picture();
  }

  private Trace picture() {
    all.use(List.of(), k.etching().tone());
    all.use(stackSteels().stream().map(Material::of).toList(), k.mechanics().brightness());
    return all.trace();
  }

  /** Of a billet's sizes, and of what is said of its heats. */
  Trace ofCheck() {
    Moment hottest = hottest(Stream.empty());
    steels();
    MetalTrace metal = new MetalTrace(k, all);
    metal.carbon(materials(), COLDEST, hottest);
    metal.surface(List.of(COLDEST, hottest));
    all.use(List.of(), coolingSteps(), k.sections().airCooling(), k.sections().steel());
    metal.forging(stackSteels());
    if (billet.covered().isEmpty()) {
      metal.coveredFaces();
    }
    heatSetting();
    return all.trace();
  }

  private void steels() {
    List<Steel> stack = stackSteels();
    every().forEach(s -> all.analysis(s, "C_min_pct", "C_max_pct"));
    stack.forEach(s -> all.temperatures(s, "published temperatures", "forge_start", "normalize"));
  }

  private Set<Steel> every() {
    Set<Steel> every = new LinkedHashSet<>(stackSteels());
    every.addAll(jackets());
    return every;
  }

  private Material body() {
    List<Steel> stack = stackSteels();
    return new Material(
        stack.size() > 1 ? "the body" : stack.get(0).id(),
        new Shop(k, Assumptions.USUAL, Resolution.SAMPLE).bodyAnalysis(billet.stack()));
  }

  /** Its steels, and the mean of them where there are several. */
  private List<Material> materials() {
    List<Material> metals = new ArrayList<>(every().stream().map(Material::of).toList());
    if (stackSteels().size() > 1) {
      metals.add(body());
    }
    return metals;
  }

  private void walkAndSoak(Advice advice) {
    Moment hottest = hottest(advice);
    List<Moment> fire = List.of(COLDEST, hottest);
    List<Steel> stack = stackSteels();
    Material body = body();
    steels();
    MetalTrace metal = new MetalTrace(k, all);
    metal.carbon(materials(), COLDEST, hottest);
    metal.surface(fire);
    all.use(List.of(), fire, k.forging().ironScaling());
    if (billet.equipment().kilnTaken().there()) {
      all.use(materials(), fire, k.forging().compactScale());
    }
    all.use(List.of(), cooling(advice), k.sections().airCooling(), k.sections().steel());
    metal.forging(stack);
    all.use(
        List.of(body),
        fire,
        k.forging().grainGrowth(),
        k.forging().pinning(),
        k.forging().grainNumber());
    metal.hardening(stack.stream().map(Material::of).toList());
    metal.etch(stack.stream().map(Material::of).toList());
    all.use(List.of(), List.of(hottest), k.sections().furnace());
    if (billet.covered().isEmpty()) {
      metal.coveredFaces();
    }
    settings();
  }

  private void settings() {
    all.setting(
        "visible-line",
        "when a line shows: where it etches whiter over 0.06 mm by 1 than over %.0f mm around it, on"
            + " the face",
        1e3 * Eye.BROAD_METRES);
    all.setting(
        "possible-histories",
        "the band: one sigma of the speed of carbon %.0f %%, of temperature %.0f C, of times %.0f"
            + " %%, of grinding %.2f mm; evenly spread: covered share %.1f to %.1f, ferrite of a"
            + " cooling over its band, carbon over the grade's limits, scaling from steel to"
            + " iron, breadth that the eye compares %.1f to %.1f mm",
        100 * Assumptions.MOBILITY_SIGMA,
        Assumptions.KELVIN_SIGMA,
        100 * Histories.TIME_SIGMA,
        1e3 * Histories.GRINDING_SIGMA_METRES,
        Assumptions.LEAST_COVERED,
        Histories.MOST_COVERED,
        1e3 * Histories.LEAST_BROAD_METRES,
        1e3 * Histories.MOST_BROAD_METRES);
    heatSetting();
    all.margins();
  }

  private void heatSetting() {
    all.setting(
        "heats",
        "a heat rises from %.0f C, cooling is followed to %.0f C",
        Shop.DULL_CELSIUS,
        Shop.BLACK_CELSIUS);
  }

  private List<Moment> cooling(Advice advice) {
    Stream<Moment> segments =
        advice.schedule().segments().stream()
            .filter(s -> s.kind() == ScheduleAdvice.Segment.Kind.COOL)
            .map(s -> new Moment(s.step().words(), s.fromC()));
    return Stream.concat(segments, coolingSteps().stream()).toList();
  }

  private List<Moment> coolingSteps() {
    Stream<Moment> steps = heats(billet.steps().stream().filter(Step.Treat.class::isInstance));
    return Stream.concat(Stream.of(new Moment("black heat", Shop.BLACK_CELSIUS)), steps).toList();
  }

  /** The hottest moment of the history and of the soaks told of. */
  private Moment hottest(Advice advice) {
    Stream<Moment> soaks =
        advice.soak().options().stream()
            .map(o -> new Moment("the hottest soak listed", o.temperatureC()));
    Stream<Moment> segments =
        advice.schedule().segments().stream().map(s -> new Moment(s.step().words(), s.toC()));
    return hottest(Stream.concat(soaks, segments));
  }

  private Moment hottest(Stream<Moment> others) {
    return Stream.concat(heats(billet.steps().stream()), others)
        .reduce(new Moment("dull heat", Shop.DULL_CELSIUS), Moment::orHotter);
  }

  private static Stream<Moment> heats(Stream<Step> steps) {
    return steps.flatMap(
        s -> s.heats().stream().map(h -> new Moment(s.title(), h.hottest().celsius())));
  }

  private List<Steel> stackSteels() {
    return billet.stack().steels().stream().distinct().toList();
  }

  private List<Steel> jackets() {
    return billet.steps().stream()
        .flatMap(s -> s instanceof Step.Tile t ? t.jacket().stream() : Stream.empty())
        .map(j -> j.steel())
        .toList();
  }
}
