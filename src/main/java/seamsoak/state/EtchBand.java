package seamsoak.state;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import seamsoak.billet.Shop;
import seamsoak.billet.Stack;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Metal;
import seamsoak.property.Correlations;
import seamsoak.property.etch.Descent;
import seamsoak.property.etch.Shade;
import seamsoak.property.hardening.Hardening;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Steel;

/**
 * How white each metal of a piece etches in one state, as a band: how much ferrite a cooling leaves
 * is not known well. Where a line runs through the mean of layers, each layer etches as its own
 * steel does, with the carbon that it has beside that of the mean.
 *
 * @param byMetal by the name of a metal on the lines, the steels that it stands for
 */
public record EtchBand(Map<String, List<Layer>> byMetal) {
  /**
   * A steel.
   *
   * @param shade how white it etches
   * @param perMean its carbon over that of the metal that stands for it
   */
  record Layer(Shade shade, double perMean) {}

  /** How one steel etches that has that much carbon far from any seam. */
  private interface Law {
    Shade of(PhaseLines steel, double carbonPct);
  }

  /** After a cooling from austenite. */
  public static EtchBand cooled(
      Shop shop, Stack stack, Workpiece piece, Descent descent, double grainNumber) {
    Correlations k = shop.correlations();
    return of(
        shop, stack, piece, (s, carbon) -> k.etching().cooled(s, descent, grainNumber, carbon));
  }

  /** Quenched from a heat. */
  public static EtchBand hardened(Shop shop, Stack stack, Workpiece piece, double fromCelsius) {
    Hardening h = shop.correlations().hardening();
    DoubleUnaryOperator vickers =
        carbon -> h.conversion().vickers(h.asQuenched().measuredHrc(carbon));
    return of(
        shop,
        stack,
        piece,
        (s, carbon) -> shop.correlations().etching().hardened(s, fromCelsius, vickers));
  }

  private static EtchBand of(Shop shop, Stack stack, Workpiece piece, Law law) {
    Map<String, Layer> steels = new LinkedHashMap<>();
    for (Steel steel : stack.steels()) {
      Metal metal = shop.metal(steel);
      steels.computeIfAbsent(
          metal.name(), n -> new Layer(shade(metal, Limits.carbonPct(steel, piece), law), 1));
    }
    Map<String, List<Layer>> all = new HashMap<>();
    steels.forEach((name, layer) -> all.put(name, List.of(layer)));
    if (!all.containsKey(piece.body().name())) {
      double mean = piece.body().percent(piece.coreRatio());
      List<Layer> layers = new ArrayList<>();
      for (Steel steel : stack.steels().stream().distinct().toList()) {
        layers.add(
            new Layer(
                steels.get(shop.metal(steel).name()).shade(),
                Limits.carbonPct(steel, piece) / mean));
      }
      all.put(piece.body().name(), List.copyOf(layers));
    }
    piece
        .jacket()
        .ifPresent(
            m ->
                all.computeIfAbsent(
                    m.name(),
                    n -> List.of(new Layer(shade(m, m.percent(m.startRatio()), law), 1))));
    return new EtchBand(Map.copyOf(all));
  }

  private static Shade shade(Metal metal, double carbonPct, Law law) {
    return law.of(metal.law().phases().orElseThrow(), carbonPct);
  }

  /** At a place in the band: 0 little ferrite, 0.5 the likely share, 1 much. */
  public Etch at(double place) {
    return new Etch(
        byMetal.entrySet().stream()
            .collect(
                Collectors.toUnmodifiableMap(
                    Map.Entry::getKey,
                    e -> e.getValue().stream().map(l -> whiteness(l, place)).toList())));
  }

  private static DoubleUnaryOperator whiteness(Layer layer, double place) {
    DoubleUnaryOperator own = layer.shade().at(place);
    double per = layer.perMean();
    return per == 1 ? own : percent -> own.applyAsDouble(per * percent);
  }
}
