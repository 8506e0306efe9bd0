package seamsoak.property;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import seamsoak.numeric.Roots;
import seamsoak.reference.Inputs;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * How carbon behaves in iron and steel, by the names of the reference folders: phase lines,
 * diffusivity, activity, the surface under scale.
 */
public final class CarbonPropertyReferences {
  private static final Correlations K = Analyses.CORRELATIONS;
  private static final IronCarbonEquilibria FE_C = new IronCarbonEquilibria(K);
  private static final Composition IRON = Analyses.of("");
  private static final double ZERO_CELSIUS = 273.15;

  private CarbonPropertyReferences() {}

  /** The properties by name. */
  public static Map<String, ToDoubleFunction<Inputs>> all() {
    Map<String, ToDoubleFunction<Inputs>> all = new HashMap<>();
    ironCarbon(all);
    steelLines(all);
    diffusivity(all);
    activity(all);
    alloyFactors(all);
    surface(all);
    return all;
  }

  private static void ironCarbon(Map<String, ToDoubleFunction<Inputs>> all) {
    all.put("iron-transition", in -> ironTurns(in.get("near")));
    all.put("iron-fcc-less-bcc", in -> Unary.fccIron(kelvin(in)) - Unary.bccIron(kelvin(in)));
    all.put("eutectoid-temperature", CarbonPropertyReferences::eutectoid);
    all.put("eutectoid-carbon", in -> FE_C.besideFerrite(eutectoid(in)));
    all.put("eutectoid-ferrite", in -> FE_C.ferriteBesideAustenite(eutectoid(in)));
    all.put(
        "eutectoid-activity",
        in -> Math.exp(FE_C.lnActivity(eutectoid(in), FE_C.besideFerrite(eutectoid(in)))));
    all.put("austenite-beside-ferrite", in -> FE_C.besideFerrite(in.get("celsius")));
    all.put("ferrite-beside-austenite", in -> FE_C.ferriteBesideAustenite(in.get("celsius")));
    all.put("austenite-beside-cementite", in -> FE_C.besideCementite(in.get("celsius")));
    all.put("graphite-saturation", in -> FE_C.besideGraphite(in.get("celsius")));
    all.put(
        "activity-beside-cementite",
        in ->
            Math.exp(FE_C.lnActivity(in.get("celsius"), FE_C.besideCementite(in.get("celsius")))));
    all.put("fe-c-a3", in -> K.ironCarbon().a3Celsius(in.get("C")));
    all.put("fe-c-accm", in -> K.ironCarbon().accmCelsius(in.get("C")));
  }

  private static double ironTurns(double near) {
    double from = near + ZERO_CELSIUS;
    return Roots.between(t -> Unary.fccIron(t) - Unary.bccIron(t), from - 60, from + 60, 1e-9)
        - ZERO_CELSIUS;
  }

  /** Where austenite, ferrite and cementite or graphite stand together, C. */
  private static double eutectoid(Inputs in) {
    boolean graphite = in.get("graphite") == 1;
    return Roots.between(
        t -> FE_C.besideFerrite(t) - (graphite ? FE_C.besideGraphite(t) : FE_C.besideCementite(t)),
        700,
        800,
        1e-9);
  }

  private static void steelLines(Map<String, ToDoubleFunction<Inputs>> all) {
    all.put(
        "ferrite-ends",
        in ->
            K.ironCarbon().a3Celsius(in.get("C"))
                + K.andrewsAe3().alloyShiftCelsius(in.composition()));
    all.put(
        "cementite-ends",
        in ->
            K.ironCarbon().accmCelsius(in.get("C"))
                + K.leeLeeAccm().alloyShiftCelsius(in.composition(), in.get("C")));
  }

  private static void diffusivity(Map<String, ToDoubleFunction<Inputs>> all) {
    for (CarbonDiffusivity d : K.carbonDiffusivity()) {
      String name = d.correlation().name();
      all.put(name + "-diffusivity", in -> d.squareMetresPerSecond(kelvin(in), in.composition()));
      all.put(name + "-mean-diffusivity", in -> mean(d, in));
      all.put(name + "-alloy-ratio", in -> alloyRatio(d, in));
    }
    for (CarbonDiffusivity d : K.ferriteDiffusivities()) {
      all.put(
          d.correlation().name() + "-diffusivity", in -> d.squareMetresPerSecond(kelvin(in), IRON));
    }
    all.put("unchanged-mobility-alloy-ratio", CarbonPropertyReferences::unchangedMobilityRatio);
    CarbonDiffusivity used = K.carbonDiffusivity().get(0);
    all.put(
        "ferrite-over-austenite",
        in ->
            K.ferriteDiffusivity().squareMetresPerSecond(kelvin(in))
                / used.squareMetresPerSecond(kelvin(in), in.composition()));
    all.put("agren1986-factor", in -> K.mobility().dilute(Double.POSITIVE_INFINITY));
    all.put("agren1986-energy", in -> 8.314463e-3 * K.mobility().activation());
  }

  /** Mean over mole fractions of carbon. */
  private static double mean(CarbonDiffusivity d, Inputs in) {
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

  private static double alloyRatio(CarbonDiffusivity d, Inputs in) {
    Composition plain = IRON.with(Element.C, in.get("C"));
    return d.squareMetresPerSecond(kelvin(in), in.composition())
        / d.squareMetresPerSecond(kelvin(in), plain);
  }

  /** The engine's own diffusivity, with the mobility of plain iron and carbon. */
  private static double unchangedMobilityRatio(Inputs in) {
    return engineDiffusivity(in, in.composition())
        / engineDiffusivity(in, IRON.with(Element.C, in.get("C")));
  }

  private static double engineDiffusivity(Inputs in, Composition steel) {
    MetalLattice lattice = MetalLattice.of(steel);
    double y = lattice.ratio(in.get("C"));
    return K.mobility().squareMetresPerSecond(kelvin(in), y)
        * at(in, lattice).thermodynamicFactor(y);
  }

  private static void activity(Map<String, ToDoubleFunction<Inputs>> all) {
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
          return l.percent(at(in, l).ratioAt(0)) - FE_C.besideGraphite(in.get("celsius"));
        });
    all.put("wagner-epsilon", CarbonPropertyReferences::epsilon);
  }

  /** d ln a of dilute carbon by the metal fraction of an element, in iron without it. */
  private static double epsilon(Inputs in) {
    MetalLattice little = MetalLattice.of(in.composition());
    double alloyed = at(in, little).c0();
    double plain = at(in, MetalLattice.of(IRON)).c0();
    return (alloyed - plain) / (1 - little.iron());
  }

  private static void alloyFactors(Map<String, ToDoubleFunction<Inputs>> all) {
    ToDoubleFunction<Inputs> overSteel =
        in -> {
          MetalLattice iron = MetalLattice.of(IRON);
          double plain = iron.percent(at(in, iron).ratioAt(lnActivity(in, in.composition())));
          return plain / in.get("C");
        };
    all.put("carbon-potential-ratio", overSteel);
    all.put("log10-carbon-potential-ratio", in -> Math.log10(overSteel.applyAsDouble(in)));
  }

  private static void surface(Map<String, ToDoubleFunction<Inputs>> all) {
    ScaledSurface s = K.scaledSurface();
    all.put("activity-under-scale", in -> Math.exp(s.lnActivity(kelvin(in), 1)));
    all.put(
        "scale-neutral",
        in ->
            Roots.between(t -> s.lnActivity(t, 1) - Math.log(in.get("activity")), 900, 1500, 1e-9)
                - ZERO_CELSIUS);
  }

  private static double lnActivity(Inputs in, Composition steel) {
    MetalLattice lattice = MetalLattice.of(steel);
    return at(in, lattice).lnActivity(lattice.ratio(in.get("C")));
  }

  private static AusteniteActivity.At at(Inputs in, MetalLattice lattice) {
    return new AusteniteActivity(K.activity(), lattice).at(kelvin(in));
  }

  private static double kelvin(Inputs in) {
    return in.get("celsius") + ZERO_CELSIUS;
  }
}
