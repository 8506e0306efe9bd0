package seamsoak.trace;

import java.util.List;
import java.util.function.Predicate;
import seamsoak.billet.Assumptions;
import seamsoak.property.Correlations;
import seamsoak.property.etch.Etching;
import seamsoak.property.forging.ForgingRule;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.phase.PhaseLines;
import seamsoak.property.phase.Phases;
import seamsoak.property.phase.Unary;
import seamsoak.single.Decarburization;
import seamsoak.source.Standing;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.trace.TraceEntries.Material;
import seamsoak.trace.TraceEntries.Moment;

/** What carbon in a metal, its surface and its forging limits rest on. */
record MetalTrace(Correlations k, TraceEntries all) {

  /** Carbon in metals between two temperatures. */
  void carbon(List<Material> metals, Moment coldest, Moment hottest) {
    phaseLines(metals);
    Phases p = k.phases();
    for (Material m : metals) {
      PhaseLines lines = k.lines(m.analysis());
      boolean always = lines.alwaysAustenite();
      if (lines.besideChromiumCarbidePct(hottest.celsius()).isPresent()) {
        all.use(List.of(m), List.of(coldest, hottest), p.chromiumCarbide());
      }
      double never = Double.NEGATIVE_INFINITY;
      Moment a1 = new Moment("A1 of " + m.name(), always ? never : lines.a1Celsius());
      Moment a3 = new Moment("A3 of " + m.name(), always ? never : lines.ac3Celsius(0));
      if (hottest.celsius() >= a1.celsius()) {
        List<Material> one = List.of(m);
        List<Moment> moments = List.of(coldest.orHotter(a1), hottest);
        all.use(one, moments, p.mobility(), p.activity().iron());
        m.analysis()
            .elements()
            .forEach(e -> p.activity().of(e).ifPresent(c -> all.use(one, moments, c)));
      }
      if (coldest.celsius() < a3.celsius()) {
        all.use(
            List.of(),
            List.of(coldest, hottest.orCooler(a3)),
            p.ferriteDiffusivity(),
            p.ferriteActivity());
      }
      if (coldest.celsius() < a1.celsius()) {
        all.use(List.of(), List.of(coldest), Unary.correlation());
      }
    }
  }

  void phaseLines(List<Material> metals) {
    all.use(metals, k.critical().ae1());
    k.critical().ae1().members().forEach(f -> all.use(metals, f));
    // each line is asked about the carbon on its own side of the eutectoid
    Predicate<Material> beyond = m -> k.lines(m.analysis()).carbideLast(m.analysis().carbon());
    all.use(metals.stream().filter(beyond.negate()).toList(), k.phases().ironCarbon().a3());
    all.use(metals.stream().filter(beyond).toList(), k.phases().ironCarbon().accm());
    all.use(metals, k.critical().a3Alloy().alloyShift(), k.critical().accmAlloy());
    if (metals.stream().anyMatch(m -> m.analysis().percent(Element.NI) > 0)) {
      all.use(PhaseLines.austenitic());
    }
  }

  void surface(List<Moment> fire) {
    all.use(List.of(), fire, k.phases().scaledSurface(), k.forging().steelScaling());
    all.setting(
        "carbon-monoxide",
        "pressure of CO under the scale: %s atm",
        Assumptions.USUAL.carbonMonoxideAtm());
  }

  /** What a face by itself loses, with the band of that. */
  void face(Material metal, List<Moment> fire) {
    surface(fire);
    all.use(List.of(metal), fire, k.forging().compactScale(), k.forging().ironScaling());
    all.setting("bands-of-a-face", "%s", Decarburization.bands());
  }

  void coveredFaces() {
    all.setting(
        "covered-faces",
        "a covered face is reached by the fire %.0f %% as much as an open one",
        100 * Assumptions.USUAL.coveredShare());
  }

  /** Whether sections harden in air and in a quench, and how hard. */
  void hardening(List<Material> metals) {
    Hardening h = k.hardening();
    all.use(metals, h.window());
    hardness(metals);
    dissolved(metals);
    all.use(metals, h.idealDiameter(), h.criterion(), h.depth(), h.quench());
  }

  /** What of their carbides is in solution at the hardening heat. */
  void dissolved(List<Material> metals) {
    List<Material> some = metals.stream().filter(m -> m.analysis().percent(Element.V) > 0).toList();
    if (!some.isEmpty()) {
      all.use(some, k.hardening().vanadium());
    }
    List<Material> chromium =
        metals.stream().filter(m -> m.analysis().percent(Element.CR) > 0).toList();
    if (!chromium.isEmpty()) {
      all.use(chromium, k.hardening().slowCarbide());
    }
  }

  /** What a steel hardened by itself comes to in its bath. */
  void alone(List<Material> metals) {
    Hardening h = k.hardening();
    hardness(metals);
    all.use(metals, k.critical().ms(), k.critical().highCarbonMs());
    retained(metals);
    unhardened(metals);
    all.use(metals, h.idealDiameter(), h.criterion(), h.depth(), h.quench());
  }

  private void retained(List<Material> metals) {
    Hardening h = k.hardening();
    all.use(metals, h.rateByAnalysis(), h.rateAlike(), h.retained());
  }

  /** How hard what did not harden is. */
  private void unhardened(List<Material> metals) {
    Hardening h = k.hardening();
    all.use(metals, h.normalized(), h.airCooled());
    all.use(List.of(), h.brinell());
  }

  /** How hard martensite is. */
  void hardness(List<Material> metals) {
    Hardening h = k.hardening();
    all.use(metals, h.asQuenched(), h.martensite(), h.conversion());
  }

  /** What an etch shows of them, cooled and hardened. */
  void etch(List<Material> metals) {
    Etching e = k.etching();
    hardness(metals);
    all.use(metals, e.pearlite(), e.ferrite());
    all.use(List.of(), e.extendedAccm(), e.extendedA3(), e.whiteness(), e.looks());
    all.use(List.of(), e.carbonInAustenite());
  }

  /** What a blade becomes. */
  void blade(List<Material> metals, List<Moment> heats) {
    Hardening h = k.hardening();
    all.use(metals, k.critical().ms(), k.critical().highCarbonMs());
    hardening(metals);
    all.use(
        metals,
        h.ferriteLeft(),
        h.parameter(),
        h.temperedByAnalysis(),
        h.temperedByAnalysis().loss(),
        h.magnet(),
        h.pearlite());
    unhardened(metals);
    retained(metals);
    all.use(List.of(), heats, k.sections().furnace());
    String sheets = "tempering-tables";
    all.limit(sheets, "hardness after tempers", sheets, Standing.PARTLY);
  }

  /** Forging limits, and those above them. */
  void forging(List<Steel> steels) {
    List<Steel> unpublished =
        steels.stream().filter(s -> s.heatTreatment().forgeStartC().isEmpty()).toList();
    if (!unpublished.isEmpty()) {
      all.use(unpublished.stream().map(Material::of).toList(), k.forging().rule().highestForging());
    }
    burning(steels);
  }

  void burning(List<Steel> steels) {
    ForgingRule rule = k.forging().rule();
    List<Material> metals = steels.stream().map(Material::of).toList();
    all.use(metals, rule.burning());
    if (steels.stream().anyMatch(s -> rule.isStainless(s.analysis()))) {
      all.use(rule.stainless());
    }
    all.use(metals, k.forging().solidus(), rule.refusal());
  }
}
