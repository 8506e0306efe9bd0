package seamsoak.property;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import seamsoak.data.DataFolder;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.etch.EtchReferences;
import seamsoak.property.forging.AstmE112;
import seamsoak.property.forging.Atmosphere;
import seamsoak.property.forging.CompactScale;
import seamsoak.property.forging.MechanicsReferences;
import seamsoak.property.forging.ScalingConstant;
import seamsoak.property.hardening.HardeningReferences;
import seamsoak.property.phase.CarbonPropertyReferences;
import seamsoak.property.section.En1993Steel;
import seamsoak.property.section.SectionReferences;
import seamsoak.reference.Inputs;
import seamsoak.source.Estimate;

/** What this package computes, by the names of the reference folders. */
public final class PropertyReferences {
  private PropertyReferences() {}

  /** The properties by name. */
  public static Map<String, ToDoubleFunction<Inputs>> all() {
    return all(DataFolder.packed());
  }

  /** The same from other tables. */
  public static Map<String, ToDoubleFunction<Inputs>> all(DataFolder data) {
    Correlations k = Correlations.load(data);
    Map<String, ToDoubleFunction<Inputs>> all = new HashMap<>();
    critical(all, k);
    forging(all, k);
    compactScale(all, k);
    grain(all, k);
    heat(all, k);
    HardeningReferences.add(all, k);
    SectionReferences.add(all, k);
    MechanicsReferences.add(all, k);
    EtchReferences.add(all, k);
    EtchReferences.addLooks(all, k);
    all.putAll(CarbonPropertyReferences.all(data));
    return all;
  }

  private static void critical(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    for (List<? extends CriticalTemperature> competing :
        List.of(
            k.critical().lower(),
            k.critical().upper(),
            k.critical().martensiteStart(),
            k.critical().bainiteStart(),
            List.of(k.forging().solidus()))) {
      competing.forEach(t -> all.put(t.correlation().name(), in -> t.celsius(in.composition())));
    }
    all.put("ae1-mean", in -> k.critical().ae1().celsius(in.composition()));
    all.put("ae1-mean-margin", in -> k.critical().ae1().subCriticalMarginKelvin());
    all.put(
        "andrews1965-ae3-shift", in -> k.critical().a3Alloy().alloyShiftCelsius(in.composition()));
    all.put(
        "lee-lee2007-accm-shift",
        in -> k.critical().accmAlloy().alloyShiftCelsius(in.composition(), in.get("C")));
    all.put(
        "koistinen-marburger1959",
        in -> 100 * k.hardening().rateAlike().retained(in.get("ms"), in.get("celsius")));
    all.put("retained-austenite", in -> retained(k, in).value());
    all.put("retained-austenite-low", in -> retained(k, in).low());
    all.put("retained-austenite-high", in -> retained(k, in).high());
    all.put(
        "van-bohemen2012-retained",
        in ->
            100
                * k.hardening()
                    .rateByAnalysis()
                    .retained(
                        in.composition(),
                        k.critical().ms().celsius(in.composition()),
                        in.get("celsius")));
  }

  private static Estimate retained(Correlations k, Inputs in) {
    return k.hardening()
        .retained()
        .retained(in.composition(), k.critical().ms().celsius(in.composition()), in.get("celsius"))
        .map(share -> 100 * share);
  }

  private static void forging(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    all.put("burning", in -> k.forging().rule().burning().celsius(in.get("C")));
    all.put("highest-forging", in -> k.forging().rule().highestForging().celsius(in.get("C")));
    all.put(
        "refusal",
        in -> k.forging().rule().limits(in.composition(), OptionalDouble.empty()).refusalCelsius());
    all.put("safe-forging", in -> k.forging().rule().safeForging().celsius(in.get("C")));
    Map<String, ScalingConstant> scaling =
        Map.of(
            "paidassi1958",
            k.forging().ironScaling(),
            "birks-jackson1970",
            k.forging().steelScaling());
    scaling.forEach(
        (name, law) -> {
          all.put(name + "-scaling", in -> law.squareMetresPerSecond(kelvin(in)));
          all.put(
              name + "-metal-loss",
              in -> 1e6 * Math.sqrt(2 * law.squareMetresPerSecond(kelvin(in)) * seconds(in)));
        });
  }

  private static void compactScale(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    CompactScale scale = k.forging().compactScale();
    for (Atmosphere in : Atmosphere.values()) {
      String name = "scale-open-" + in.name().toLowerCase(Locale.ROOT).replace('_', '-');
      all.put(name, i -> scale.open(i.composition(), in, i.get("celsius")).value());
      all.put(name + "-low", i -> scale.open(i.composition(), in, i.get("celsius")).low());
      all.put(name + "-high", i -> scale.open(i.composition(), in, i.get("celsius")).high());
    }
    all.put("scale-factor", i -> scale.scaling(i.composition()).value());
    all.put("scale-factor-low", i -> scale.scaling(i.composition()).low());
    all.put("scale-factor-high", i -> scale.scaling(i.composition()).high());
  }

  private static void grain(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    AstmE112 e112 = k.forging().grainNumber();
    all.put("mean-intercept", in -> 1e6 * e112.interceptMetres(in.get("number")));
    all.put("grain-diameter", in -> 1e6 * e112.diameterMetres(in.get("number")));
    all.put("grains-per-mm2", in -> e112.grainsPerSquareMillimetre(in.get("number")));
    all.put("grain-number", in -> e112.number(1e-6 * in.get("micrometres")));
    ToDoubleFunction<Inputs> lee =
        in -> k.forging().grainGrowth().metres(in.composition(), kelvin(in), seconds(in));
    all.put("lee-lee2008-grain", in -> 1e6 * lee.applyAsDouble(in));
    all.put(
        "nishizawa1997-pinning",
        in -> 1e6 * k.forging().pinning().metres(in.get("cementite-carbon")));
    all.put("lee-lee2008-grain-number", in -> e112.number(lee.applyAsDouble(in)));
  }

  private static void heat(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    En1993Steel steel = k.sections().steel();
    all.put(
        "specific-heat",
        in ->
            (steel.heatContent(in.get("celsius") + 1e-4) - steel.heatContent(in.get("celsius")))
                / 1e-4);
    all.put("conductivity", in -> steel.conductivity(in.get("celsius")));
    all.put("elongation", in -> 1e3 * steel.elongation(in.get("celsius")));
    all.put(
        "enthalpy",
        in -> (steel.heatContent(in.get("to")) - steel.heatContent(in.get("from"))) / 1000);
  }

  private static double kelvin(Inputs in) {
    return in.get("celsius") + 273.15;
  }

  private static double seconds(Inputs in) {
    return 60 * in.get("minutes");
  }
}
