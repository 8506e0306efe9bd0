package seamsoak.property.phase;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import seamsoak.data.DataFolder;
import seamsoak.numeric.Roots;
import seamsoak.property.Correlations;
import seamsoak.reference.Inputs;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.support.Analyses;

/**
 * How carbon behaves in iron and steel, by the names of the reference folders: phase lines,
 * diffusivity, activity, the surface under scale.
 */
public final class CarbonPropertyReferences {
  private static final Composition IRON = Analyses.of("");
  private static final double ZERO_CELSIUS = 273.15;

  private final Correlations k;
  private final IronCarbonEquilibria feC;

  private CarbonPropertyReferences(Correlations k) {
    this.k = k;
    this.feC = new IronCarbonEquilibria(k);
  }

  /** The properties by name, from some tables. */
  public static Map<String, ToDoubleFunction<Inputs>> all(DataFolder data) {
    return new CarbonPropertyReferences(Correlations.load(data)).properties();
  }

  private Map<String, ToDoubleFunction<Inputs>> properties() {
    Map<String, ToDoubleFunction<Inputs>> all = new HashMap<>();
    ironCarbon(all);
    steelLines(all);
    diffusivity(all);
    activity(all);
    alloyFactors(all);
    surface(all);
    return all;
  }

  private void ironCarbon(Map<String, ToDoubleFunction<Inputs>> all) {
    all.put("iron-transition", in -> ironTurns(in.get("near")));
    all.put(
        "iron-fcc-less-bcc",
        in -> IronCarbonEquilibria.fccIron(kelvin(in)) - Unary.bccIron(kelvin(in)));
    all.put("eutectoid-temperature", this::eutectoid);
    all.put("eutectoid-carbon", in -> feC.besideFerrite(eutectoid(in)));
    all.put("eutectoid-ferrite", in -> feC.ferriteBesideAustenite(eutectoid(in)));
    all.put(
        "eutectoid-activity",
        in -> Math.exp(feC.lnActivity(eutectoid(in), feC.besideFerrite(eutectoid(in)))));
    all.put("austenite-beside-ferrite", in -> feC.besideFerrite(in.get("celsius")));
    all.put("ferrite-beside-austenite", in -> feC.ferriteBesideAustenite(in.get("celsius")));
    all.put("austenite-beside-cementite", in -> feC.besideCementite(in.get("celsius")));
    all.put(
        "carbon-beside-chromium-carbide",
        in -> k.lines(in.composition()).besideChromiumCarbidePct(in.get("celsius")).orElse(-1));
    all.put("graphite-saturation", in -> feC.besideGraphite(in.get("celsius")));
    all.put(
        "activity-beside-cementite",
        in -> Math.exp(feC.lnActivity(in.get("celsius"), feC.besideCementite(in.get("celsius")))));
    all.put("fe-c-a3", in -> k.phases().ironCarbon().a3Celsius(in.get("C")));
    all.put("fe-c-accm", in -> k.phases().ironCarbon().accmCelsius(in.get("C")));
  }

  private double ironTurns(double near) {
    double from = near + ZERO_CELSIUS;
    return Roots.between(
            t -> IronCarbonEquilibria.fccIron(t) - Unary.bccIron(t), from - 60, from + 60, 1e-9)
        - ZERO_CELSIUS;
  }

  /** Where austenite, ferrite and cementite or graphite stand together, C. */
  private double eutectoid(Inputs in) {
    boolean graphite = in.get("graphite") == 1;
    return Roots.between(
        t -> feC.besideFerrite(t) - (graphite ? feC.besideGraphite(t) : feC.besideCementite(t)),
        700,
        800,
        1e-9);
  }

  private void steelLines(Map<String, ToDoubleFunction<Inputs>> all) {
    all.put(
        "ferrite-ends",
        in ->
            k.phases().ironCarbon().a3Celsius(in.get("C"))
                + k.critical().a3Alloy().alloyShiftCelsius(in.composition()));
    all.put(
        "cementite-ends",
        in ->
            k.phases().ironCarbon().accmCelsius(in.get("C"))
                + k.critical().accmAlloy().alloyShiftCelsius(in.composition(), in.get("C")));
  }

  private void diffusivity(Map<String, ToDoubleFunction<Inputs>> all) {
    for (CarbonDiffusivity d : k.phases().austeniteDiffusivities()) {
      String name = d.correlation().name();
      all.put(name + "-diffusivity", in -> d.squareMetresPerSecond(kelvin(in), in.composition()));
      all.put(name + "-mean-diffusivity", in -> mean(d, in));
      all.put(name + "-alloy-ratio", in -> alloyRatio(d, in));
    }
    for (CarbonDiffusivity d : k.phases().ferriteDiffusivities()) {
      all.put(
          d.correlation().name() + "-diffusivity", in -> d.squareMetresPerSecond(kelvin(in), IRON));
    }
    all.put("unchanged-mobility-alloy-ratio", this::unchangedMobilityRatio);
    CarbonDiffusivity used = k.phases().austeniteDiffusivities().get(0);
    all.put(
        "ferrite-over-austenite",
        in ->
            k.phases().ferriteDiffusivity().squareMetresPerSecond(kelvin(in))
                / used.squareMetresPerSecond(kelvin(in), in.composition()));
    all.put("agren1986-factor", in -> k.phases().mobility().dilute(Double.POSITIVE_INFINITY));
    all.put("agren1986-energy", in -> 8.314463e-3 * k.phases().mobility().activation());
  }

  /** Mean over mole fractions of carbon. */
  private double mean(CarbonDiffusivity d, Inputs in) {
    int parts = 200;
    double from = in.get("xFrom");
    double to = in.get("xTo");
    double sum = 0;
    for (int i = 0; i < parts; i++) {
      double x = from + (i + 0.5) * (to - from) / parts;
      double carbon =
          100 * Element.C.mass() * x / (Element.C.mass() * x + Element.IRON_MASS * (1 - x));
      sum += d.squareMetresPerSecond(kelvin(in), IRON.with(Element.C, carbon));
    }
    return sum / parts;
  }

  private double alloyRatio(CarbonDiffusivity d, Inputs in) {
    Composition plain = IRON.with(Element.C, in.get("C"));
    return d.squareMetresPerSecond(kelvin(in), in.composition())
        / d.squareMetresPerSecond(kelvin(in), plain);
  }

  /** The engine's own diffusivity, with the mobility of plain iron and carbon. */
  private double unchangedMobilityRatio(Inputs in) {
    return engineDiffusivity(in, in.composition())
        / engineDiffusivity(in, IRON.with(Element.C, in.get("C")));
  }

  private double engineDiffusivity(Inputs in, Composition steel) {
    MetalLattice lattice = MetalLattice.of(steel);
    double y = lattice.ratio(in.get("C"));
    return k.phases().mobility().squareMetresPerSecond(kelvin(in), y)
        * at(in, lattice).thermodynamicFactor(y);
  }

  private void activity(Map<String, ToDoubleFunction<Inputs>> all) {
    all.put("activity", in -> Math.exp(lnActivity(in, in.composition())));
    all.put(
        "log10-activity-ratio",
        in ->
            (lnActivity(in, in.composition()) - lnActivity(in, IRON.with(Element.C, in.get("C"))))
                / Math.log(10));
    all.put(
        "log10-activity-ratio-per-atom",
        in -> {
          double y = MetalLattice.of(IRON).ratio(in.get("C"));
          double steel = at(in, MetalLattice.of(in.composition())).lnActivity(y);
          return (steel - at(in, MetalLattice.of(IRON)).lnActivity(y)) / Math.log(10);
        });
    all.put(
        "carbon-beside-graphite-shift",
        in -> {
          MetalLattice l = MetalLattice.of(in.composition());
          return l.percent(at(in, l).ratioAt(0)) - feC.besideGraphite(in.get("celsius"));
        });
    all.put("wagner-epsilon", this::epsilon);
  }

  /** d ln a of dilute carbon by the metal fraction of an element, in iron without it. */
  private double epsilon(Inputs in) {
    MetalLattice little = MetalLattice.of(in.composition());
    double alloyed = at(in, little).c0();
    double plain = at(in, MetalLattice.of(IRON)).c0();
    return (alloyed - plain) / (1 - little.iron());
  }

  private void alloyFactors(Map<String, ToDoubleFunction<Inputs>> all) {
    ToDoubleFunction<Inputs> overSteel =
        in -> {
          MetalLattice iron = MetalLattice.of(IRON);
          double plain = iron.percent(at(in, iron).ratioAt(lnActivity(in, in.composition())));
          return plain / in.get("C");
        };
    all.put("carbon-potential-ratio", overSteel);
    all.put("log10-carbon-potential-ratio", in -> Math.log10(overSteel.applyAsDouble(in)));
  }

  private void surface(Map<String, ToDoubleFunction<Inputs>> all) {
    ScaledSurface s = k.phases().scaledSurface();
    all.put("activity-under-scale", in -> Math.exp(s.lnActivity(kelvin(in), 1)));
    all.put(
        "scale-neutral",
        in ->
            Roots.between(t -> s.lnActivity(t, 1) - Math.log(in.get("activity")), 900, 1500, 1e-9)
                - ZERO_CELSIUS);
  }

  private double lnActivity(Inputs in, Composition steel) {
    MetalLattice lattice = MetalLattice.of(steel);
    return at(in, lattice).lnActivity(lattice.ratio(in.get("C")));
  }

  private AusteniteActivity.Isotherm at(Inputs in, MetalLattice lattice) {
    return new AusteniteActivity(k.phases().activity(), lattice).at(kelvin(in));
  }

  private double kelvin(Inputs in) {
    return in.get("celsius") + ZERO_CELSIUS;
  }
}
