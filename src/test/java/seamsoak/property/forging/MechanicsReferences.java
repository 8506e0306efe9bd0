package seamsoak.property.forging;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import seamsoak.property.Correlations;
import seamsoak.reference.Inputs;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;

/** How steel grows, yields, welds and hardens, by the names of the reference folders. */
public final class MechanicsReferences {
  private MechanicsReferences() {}

  public static void add(Map<String, ToDoubleFunction<Inputs>> all, Correlations k) {
    Mechanics m = k.mechanics();
    lattice(all, m.expansion());
    Map<String, HandbookExpansion> lines =
        Map.of(
            "stainless-expansion", m.stainlessExpansion(),
            "nickel-expansion", m.nickelExpansion(),
            "chromium-expansion", m.chromiumExpansion());
    lines.forEach(
        (name, line) ->
            all.put(name, in -> line.meanMicroPerKelvin(line.usual(), in.get("celsius"))));
    all.put("asm4-martensite-growth", in -> m.martensiteGrowth().volumePct(in.get("C")));
    all.put(
        "misaka-yoshimoto1967-hot-strength",
        in -> m.hotStrength().megapascals(in.composition(), in.get("celsius")));
    all.put("welding-heat-usual", in -> m.welding().usualCelsius());
    all.put("welding-heat-none", in -> m.welding().noneCelsius());
    all.put("welding-heat-lowest", in -> m.welding().lowestCelsius(limits(in.get("refusal"))));
    all.put("hardening-range-low", in -> hardening(k, in).orElseThrow().lowC());
    all.put("hardening-range-high", in -> hardening(k, in).orElseThrow().highC());
    all.put(
        "hardening-heat",
        in ->
            k.hardening()
                .window()
                .heatCelsius(new TemperatureRange(in.get("low"), in.get("high"))));
    all.put("hardening-range-any", in -> hardening(k, in).isPresent() ? 1 : 0);
    all.put("etch-brightness", in -> m.brightness().of(in.composition()));
  }

  private static void lattice(Map<String, ToDoubleFunction<Inputs>> all, LatticeExpansion e) {
    SekiNagata2005Lattice a = e.lattice();
    all.put(
        "seki-nagata2005-lattice-shrinks",
        in ->
            100
                * (a.austeniteMolarVolume(in.get("kelvin"), 0)
                        / a.ferriteMolarVolume(in.get("kelvin"))
                    - 1));
    all.put("seki-nagata2005-lattice-ferrite", in -> a.ferriteNanometres(in.get("kelvin")));
    all.put(
        "seki-nagata2005-lattice-austenite",
        in -> a.austeniteNanometres(in.get("kelvin"), in.get("C")));
    all.put(
        "expansion-of-ferrite",
        in -> 1e6 * e.ferriteElongation(in.get("celsius"), in.get("C")) / (in.get("celsius") - 20));
    all.put(
        "expansion-of-austenite",
        in ->
            1e6
                    * (a.austeniteNanometres(in.get("kelvin") + 1, 0)
                        / a.austeniteNanometres(in.get("kelvin"), 0))
                - 1e6);
    all.put(
        "cementite-volume-ferrite",
        in -> 1e3 * e.ferriteElongation(in.get("celsius"), in.get("C")));
    all.put(
        "cementite-volume-austenite",
        in -> 1e3 * e.austeniteElongation(in.get("celsius"), in.get("C")));
  }

  private static ForgingLimits limits(double refusal) {
    return new ForgingLimits(
        new Estimate(refusal, refusal, refusal, "", List.of()), refusal, refusal, refusal, refusal);
  }

  private static Optional<TemperatureRange> hardening(Correlations k, Inputs in) {
    Composition c = in.composition();
    return k.hardening().window().of(Steel.written(c.format()), k.lines(c));
  }
}
