package seamsoak.state;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import seamsoak.billet.Billet;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Metal;
import seamsoak.property.forging.ForgingLimits;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.Steel;

/**
 * How hot a steel of a billet may get with the carbon that it has by now.
 *
 * @param steel as bought
 * @param limits with its carbon by now
 */
record SteelLimits(Steel steel, ForgingLimits limits) {
  static List<SteelLimits> of(Billet billet, Workpiece piece, Shop shop) {
    return billet.stack().steels().stream()
        .distinct()
        .map(s -> new SteelLimits(s, limits(s, piece, shop)))
        .toList();
  }

  private static ForgingLimits limits(Steel steel, Workpiece piece, Shop shop) {
    Metal metal = shop.metal(steel);
    boolean nickel = metal.law().phases().stream().anyMatch(PhaseLines::alwaysAustenite);
    Composition bought = shop.analysis(steel);
    double most = nickel ? bought.carbon() : atMiddles(metal, piece).orElse(bought.carbon());
    return shop.correlations()
        .forging()
        .rule()
        .limits(bought.with(Element.C, most), steel.heatTreatment().forgeStartC());
  }

  /** Carbon in the middle of its layers once they are welded, where most is left, wt%. */
  private static OptionalDouble atMiddles(Metal metal, Workpiece piece) {
    return piece.inner().stream()
        .filter(l -> l.kind() == SectionLine.Kind.LAYERS && l.isWelded())
        .map(SectionLine::strip)
        .flatMapToDouble(
            s ->
                IntStream.of(0, s.cells() - 1)
                    .filter(i -> s.metal(i).equals(metal))
                    .mapToDouble(s::percent))
        .max();
  }
}
