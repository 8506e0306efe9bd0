package seamsoak.state;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.heat.HeatCurve;
import seamsoak.property.hardening.AsQuenchedHardness;
import seamsoak.source.Caution;
import seamsoak.unit.Temperature;

/**
 * The billet after a step.
 *
 * @param step number of the step, 0 for the stack
 * @param kind such as {@code weld}
 * @param lengthMm outer size, jacket included
 * @param widthMm outer size
 * @param thicknessMm outer size
 * @param cellAspect length over width of the pattern's cell as it is looked at
 * @param lines at every set of seams and boundaries of layers
 * @param crossings where seams of two directions cross
 * @param layers carbon of each steel
 * @param skinMm depth of the skin on the flats, to 90 % of the core's carbon
 * @param sideSkinMm the same on the sides
 * @param softMm depth on the flats that no quench makes hard enough for an edge
 * @param sideSoftMm the same on the sides
 * @param faceCarbonPct carbon at the face across the thickness, wt%
 * @param scaledMm metal that scale took off a face in this step
 * @param remarks what to know of this step
 * @param heats what its heats do that they should not, worst first
 * @param cautions dangers of this step
 */
public record StageReport(
    int step,
    String kind,
    double lengthMm,
    double widthMm,
    double thicknessMm,
    double cellAspect,
    List<LineReport> lines,
    List<CrossingReport> crossings,
    List<LayerCarbon> layers,
    double skinMm,
    double sideSkinMm,
    double softMm,
    double sideSoftMm,
    double faceCarbonPct,
    double scaledMm,
    List<Stage.Remark> remarks,
    List<HeatRisk> heats,
    List<Caution> cautions) {
  /** Cooler than this chromium carbide neither forms nor dissolves in the time of a step, K. */
  private static final double CARBIDE_STAYS_KELVIN = 600 + Temperature.ZERO_CELSIUS;

  /**
   * Carbon of one steel.
   *
   * @param steel its name
   * @param meanPct mean over its layers, wt%, carbide and all
   * @param dissolvedPct of that, what is in solution at the heat of the step, for austenitic
   *     stainless steel
   */
  public record LayerCarbon(String steel, double meanPct, Optional<Double> dissolvedPct) {}

  public static StageReport of(
      Stage stage,
      Etch etch,
      AsQuenchedHardness hardness,
      List<HeatRisk> heats,
      List<Caution> cautions) {
    Workpiece p = stage.piece();
    Skin skin = Skin.of(p, hardness);
    List<SeamPlace> places = SeamPlace.of(p);
    return new StageReport(
        stage.step(),
        stage.kind(),
        p.size().lengthMetres() * 1e3,
        p.size().widthMetres() * 1e3,
        p.size().thicknessMetres() * 1e3,
        p.cellAspect(),
        LineReport.of(places, etch),
        CrossingReport.of(places, etch),
        layers(p, stage.lastHeat()),
        skin.flats().metres() * 1e3,
        skin.sides().metres() * 1e3,
        skin.flats().softMetres() * 1e3,
        skin.sides().softMetres() * 1e3,
        p.thickness().parts().get(0).percent(0),
        stage.scaledMetres() * 1e3,
        stage.remarks(),
        heats,
        cautions);
  }

  /** Mean carbon of each steel over its layers; of the body where there are none. */
  public static List<LayerCarbon> layers(Workpiece p) {
    return layers(p, Optional.empty());
  }

  /** The same after a heat. On the way down alone carbide has no time to form. */
  public static List<LayerCarbon> layers(Workpiece p, Optional<HeatCurve> heat) {
    double kelvin =
        heat.filter(c -> c.segments().stream().anyMatch(s -> s.toKelvin() >= s.fromKelvin()))
            .map(HeatCurve::peakKelvin)
            .orElse(0.0);
    Map<Metal, Sum> sums = new LinkedHashMap<>();
    p.inner().stream()
        .filter(l -> l.kind() == SectionLine.Kind.LAYERS && l.isWelded() && isUnlike(l.strip()))
        .forEach(l -> add(sums, l.strip(), l.share(), kelvin));
    if (sums.isEmpty()) {
      Sum all = Sum.NONE.plus(1, p.coreRatio(), dissolved(p.body(), p.coreRatio(), kelvin));
      return List.of(all.of(p.body()));
    }
    return sums.entrySet().stream().map(e -> e.getValue().of(e.getKey())).toList();
  }

  /** Metal, its carbon per metal atom, and what of that in percent is in solution, as sums. */
  private record Sum(double metres, double carbon, OptionalDouble dissolvedPct) {
    static final Sum NONE = new Sum(0, 0, OptionalDouble.of(0));

    Sum plus(double more, double ratio, OptionalDouble pct) {
      return new Sum(
          metres + more,
          carbon + more * ratio,
          pct.isPresent() && dissolvedPct.isPresent()
              ? OptionalDouble.of(dissolvedPct.getAsDouble() + more * pct.getAsDouble())
              : OptionalDouble.empty());
    }

    LayerCarbon of(Metal metal) {
      return new LayerCarbon(
          metal.name(),
          metal.percent(carbon / metres),
          dissolvedPct.stream().mapToObj(d -> d / metres).findFirst());
    }
  }

  /** What is in solution of so much carbon, wt%; empty where that is not told, or nothing hot. */
  private static OptionalDouble dissolved(Metal metal, double ratio, double kelvin) {
    OptionalDouble most =
        kelvin < CARBIDE_STAYS_KELVIN ? OptionalDouble.empty() : metal.mostDissolvedPct(kelvin);
    return most.isEmpty()
        ? most
        : OptionalDouble.of(Math.min(most.getAsDouble(), metal.percent(ratio)));
  }

  private static boolean isUnlike(Strip pair) {
    return !pair.metal(0).equals(pair.metal(pair.cells() - 1));
  }

  private static void add(Map<Metal, Sum> sums, Strip strip, double share, double kelvin) {
    for (int i = 0; i < strip.cells(); i++) {
      Metal metal = strip.metal(i);
      OptionalDouble pct = dissolved(metal, strip.ratio(i), kelvin);
      Sum before = sums.getOrDefault(metal, Sum.NONE);
      sums.put(metal, before.plus(share * strip.metres(i), strip.ratio(i), pct));
    }
  }
}
