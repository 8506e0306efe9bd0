package seamsoak.carbon;

import static seamsoak.support.Analyses.CORRELATIONS;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import seamsoak.carbon.problem.MovingScale;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.property.forging.ScalingConstant;
import seamsoak.property.phase.CarbonDiffusivity;
import seamsoak.reference.Inputs;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.support.Depths;

/** Skins and the metal that scale takes. A row's {@code scale} is 0 none, 1 steel's, 2 iron's. */
final class SkinReferences {
  private static final double ZERO_CELSIUS = 273.15;
  private static final double THICK = 12e-3;

  private SkinReferences() {}

  static void add(Map<String, ToDoubleFunction<Inputs>> all) {
    all.put("carbon-under-scale", SkinReferences::carbonUnderScale);
    CarbonDiffusivity used = CORRELATIONS.phases().austeniteDiffusivities().get(0);
    Composition middling = Composition.of(Map.of(Element.C, 0.4));
    DoubleUnaryOperator agren = t -> used.squareMetresPerSecond(t, middling);
    DoubleUnaryOperator book = t -> named("birks-meier-pettit-austenite", t);
    all.put("skin-of-constant-diffusivity", in -> depth(in, agren));
    all.put("skin-of-textbook-diffusivity", in -> depth(in, book));
    all.put("skin", in -> 1e3 * Depths.to(heated(in).strip(), in.get("share") * in.get("C")));
    all.put("metal-lost", in -> 1e3 * heated(in).metalLost());
    all.put("forged-skin", in -> 1e3 * Depths.to(forged(in), in.get("share") * in.get("C")));
    all.put("forged-metal-lost", in -> 1e3 * (THICK - forged(in).metres()));
    all.put("ferrite-rim-fed-as-bulk", in -> rim(in).fedAsBulk());
    all.put("free-ferrite", in -> ferriteDepth(heated(in).strip()) > 0 ? 1 : 0);
    all.put("widest-rim", in -> hottest(in, SkinReferences::ferriteDepth));
    all.put("deepest-skin", in -> hottest(in, s -> Depths.to(s, 0.9 * in.get("C"))));
  }

  private static double named(String name, double kelvin) {
    return CORRELATIONS.phases().austeniteDiffusivities().stream()
        .filter(d -> d.correlation().name().equals(name))
        .findFirst()
        .orElseThrow()
        .squareMetresPerSecond(kelvin, Composition.of(Map.of()));
  }

  private static double carbonUnderScale(Inputs in) {
    Metal steel = CarbonReferences.metal(in.composition());
    double activity = Steels.FIRE.activity().applyAsDouble(kelvin(in));
    return steel.percent(steel.law().at(kelvin(in)).ratioAt(activity));
  }

  private static double scaling(Inputs in, double kelvin) {
    ScalingConstant law =
        in.get("scale") == 2
            ? CORRELATIONS.forging().ironScaling()
            : CORRELATIONS.forging().steelScaling();
    return in.get("scale") == 0 ? 0 : law.squareMetresPerSecond(kelvin);
  }

  /** Depth below the scale in steel of one diffusivity, its surface at a stated carbon, um. */
  private static double depth(Inputs in, DoubleUnaryOperator diffusivity) {
    double kelvin = kelvin(in);
    MovingScale p =
        new MovingScale(
            diffusivity.applyAsDouble(kelvin),
            scaling(in, kelvin),
            in.get("C"),
            in.get("Cs"),
            60 * in.get("minutes"));
    Strip end = p.advanced(1.01, 1e-5).strip();
    return 1e6 * Depths.to(end, end.metal(0).percent(in.get("share") * in.get("C")));
  }

  private static StripSolver.Advanced heated(Inputs in) {
    return heated(start(in), in, kelvin(in), 60 * in.get("minutes"));
  }

  private static Strip start(Inputs in) {
    Metal steel = CarbonReferences.metal(in.composition());
    return Strip.of(steel, THICK, new Grid(2e-4, 1.05, false));
  }

  private static StripSolver.Advanced heated(
      Strip start, Inputs in, double kelvin, double seconds) {
    return new StripSolver(new Surroundings(Steels.FIRE.activity(), t -> scaling(in, t)), 1e-4)
        .advance(start, HeatCurve.hold(kelvin, seconds), Edge.OPEN);
  }

  /** Three heats of 5 min at 1220 C and five of 4 min at 1180 C, scale off after each or never. */
  private static Strip forged(Inputs in) {
    Strip strip = start(in);
    for (int heat = 0; heat < 8; heat++) {
      strip = in.get("restart") == 1 ? strip.descaled() : strip;
      double celsius = heat < 3 ? 1220 : 1180;
      strip = heated(strip, in, celsius + ZERO_CELSIUS, heat < 3 ? 300 : 240).strip();
    }
    return strip;
  }

  private static FerriteRim rim(Inputs in) {
    return new FerriteRim(in.get("C"), in.get("celsius"), in.get("carbonMonoxideAtm"));
  }

  /** The temperature, in steps, at which something is largest after a hold of an open face. */
  private static double hottest(Inputs in, ToDoubleFunction<Strip> measure) {
    double best = Double.NaN;
    double most = 0;
    for (double c = in.get("from"); c <= in.get("to"); c += in.get("step")) {
      Strip end = heated(start(in), in, c + ZERO_CELSIUS, 60 * in.get("minutes")).strip();
      double here = measure.applyAsDouble(end);
      if (here > most) {
        most = here;
        best = c;
      }
    }
    return best;
  }

  /** Depth with so little carbon as only ferrite holds. */
  private static double ferriteDepth(Strip strip) {
    double x = 0;
    for (int i = 0; i < strip.cells() && strip.percent(i) < 0.03; i++) {
      x += strip.metres(i);
    }
    return x;
  }

  private static double kelvin(Inputs in) {
    return in.get("celsius") + ZERO_CELSIUS;
  }
}
