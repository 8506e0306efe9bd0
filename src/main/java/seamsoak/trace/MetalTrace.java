package seamsoak.trace;

import java.util.List;
import java.util.Locale;
import seamsoak.billet.Assumptions;
import seamsoak.property.Correlations;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.phase.PhaseLines;
import seamsoak.property.phase.Unary;
import seamsoak.source.Standing;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;
import seamsoak.trace.TraceEntries.Material;
import seamsoak.trace.TraceEntries.Moment;

/** What carbon in a metal, its surface and its forging limits rest on. */
record MetalTrace(Correlations k, TraceEntries all) {
  private static final List<Moment> NEVER = List.of();
  private static final List<Material> WHATEVER = List.of();

  /** Carbon in metals between two temperatures. */
  void carbon(List<Material> metals, Moment coldest, Moment hottest) {
    phaseLines(metals);
    for (Material m : metals) {
      PhaseLines lines = k.lines(m.analysis());
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
        all.use(k.phases().mobility().correlation(), one, moments);
        all.use(k.phases().activity().iron(), one, moments);
        for (Element e : Element.values()) {
          if (m.analysis().percent(e) > 0) {
            k.phases().activity().of(e).ifPresent(c -> all.use(c, one, moments));
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
        all.use(k.phases().ferriteDiffusivity().correlation(), WHATEVER, moments);
        all.use(k.phases().ferriteActivity().correlation(), WHATEVER, moments);
      }
      if (!lines.alwaysAustenite() && coldest.celsius() < lines.a1Celsius()) {
        all.use(Unary.correlation(), WHATEVER, List.of(coldest));
      }
    }
  }

  void phaseLines(List<Material> metals) {
    all.use(k.critical().ae1().correlation(), metals, NEVER);
    k.critical().ae1().members().forEach(f -> all.use(f.correlation(), metals, NEVER));
    // each line is asked about the carbon on its own side of the eutectoid
    all.use(
        k.phases().ironCarbon().a3(),
        metals.stream().filter(m -> !beyondEutectoid(m)).toList(),
        NEVER);
    all.use(
        k.phases().ironCarbon().accm(),
        metals.stream().filter(this::beyondEutectoid).toList(),
        NEVER);
    all.use(k.critical().a3Alloy().alloyShift(), metals, NEVER);
    all.use(k.critical().accmAlloy().correlation(), metals, NEVER);
    if (metals.stream().anyMatch(m -> m.analysis().percent(Element.NI) > 0)) {
      all.use(PhaseLines.austenitic(), metals, NEVER);
    }
  }

  private boolean beyondEutectoid(Material m) {
    return k.lines(m.analysis()).carbideLast(m.analysis().carbon());
  }

  void surface(List<Moment> fire) {
    all.use(k.phases().scaledSurface().correlation(), WHATEVER, fire);
    all.use(k.forging().steelScaling().correlation(), WHATEVER, fire);
    all.setting(
        "carbon-monoxide",
        String.format(
            Locale.ROOT,
            "pressure of CO under the scale: %s atm",
            Assumptions.USUAL.carbonMonoxideAtm()));
  }

  void coveredFaces() {
    all.setting(
        "covered-faces",
        String.format(
            Locale.ROOT,
            "a covered face is reached by the fire %.0f %% as much as an open one",
            100 * Assumptions.USUAL.coveredShare()));
  }

  /** Whether sections harden in air and in a quench, and how hard. */
  void hardening(List<Material> metals) {
    Hardening h = k.hardening();
    all.use(h.window().correlation(), metals, NEVER);
    all.use(h.asQuenched().correlation(), metals, NEVER);
    all.use(h.martensite().correlation(), metals, NEVER);
    all.use(h.conversion().correlation(), WHATEVER, NEVER);
    all.use(h.idealDiameter().correlation(), metals, NEVER);
    all.use(h.criterion().correlation(), WHATEVER, NEVER);
    all.use(h.depth().correlation(), WHATEVER, NEVER);
  }

  /** What a blade becomes. */
  void blade(List<Material> metals, List<Moment> heats) {
    Hardening h = k.hardening();
    hardening(metals);
    all.use(k.hardening().retained().correlation(), metals, NEVER);
    all.use(h.normalized().correlation(), metals, NEVER);
    all.use(h.parameter().correlation(), WHATEVER, NEVER);
    all.use(h.magnet().correlation(), WHATEVER, NEVER);
    all.use(k.sections().furnace().correlation(), WHATEVER, heats);
    for (String key : List.of("tempering-tables", "tempering-mean")) {
      all.limit(key, "hardness after tempers", key, Standing.PARTLY);
    }
  }

  /** Forging limits, and those above them. */
  void forging(List<Steel> steels) {
    List<Material> unpublished =
        steels.stream()
            .filter(s -> s.heatTreatment().forgeStartC().isEmpty())
            .map(Material::of)
            .toList();
    if (!unpublished.isEmpty()) {
      all.use(k.forging().rule().highestForging().correlation(), unpublished, NEVER);
    }
    burning(steels);
  }

  void burning(List<Steel> steels) {
    List<Material> metals = steels.stream().map(Material::of).toList();
    all.use(k.forging().rule().burning().correlation(), metals, NEVER);
    if (metals.stream().anyMatch(m -> k.forging().rule().isStainless(m.analysis()))) {
      all.use(k.forging().rule().stainless(), metals, NEVER);
    }
    all.use(k.forging().solidus().correlation(), metals, NEVER);
    all.use(k.forging().rule().refusal(), metals, NEVER);
  }
}
