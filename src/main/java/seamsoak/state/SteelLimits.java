package seamsoak.state;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import seamsoak.billet.Billet;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Metal;
import seamsoak.property.Correlations;
import seamsoak.property.forging.ForgingLimits;
import seamsoak.property.phase.PhaseLines;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.steel.HeatTreatment;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;

/**
 * How hot a steel of a billet may get with the carbon that it has by now.
 *
 * @param steel as bought
 * @param limits with its carbon by now
 * @param changesC from which it begins to change; none where it never does
 * @param treatedC which no heat treatment of it passes: the most that its sheet prints, or enough
 *     above where it is all austenite; judgement
 */
record SteelLimits(
    Steel steel, ForgingLimits limits, OptionalDouble changesC, OptionalDouble treatedC) {
  /** A first normalizing goes so far above where a steel is all austenite, K; common practice. */
  private static final double ABOVE_AUSTENITE_KELVIN = 200;

  static List<SteelLimits> of(Billet billet, Workpiece piece, Shop shop) {
    return billet.stack().steels().stream().distinct().map(s -> of(s, piece, shop)).toList();
  }

  private static SteelLimits of(Steel steel, Workpiece piece, Shop shop) {
    Correlations k = shop.correlations();
    Metal metal = shop.metal(steel);
    boolean nickel = metal.law().phases().stream().anyMatch(PhaseLines::alwaysAustenite);
    Composition bought = shop.analysis(steel);
    double most = nickel ? bought.carbon() : atMiddles(metal, piece).orElse(bought.carbon());
    Composition now = bought.with(Element.C, most);
    ForgingLimits limits = k.forging().rule().limits(now, steel.heatTreatment().forgeStartC());
    PhaseLines lines = k.lines(now);
    return lines.alwaysAustenite()
        ? new SteelLimits(steel, limits, OptionalDouble.empty(), OptionalDouble.empty())
        : new SteelLimits(
            steel,
            limits,
            OptionalDouble.of(k.critical().ae1().celsius(now)),
            OptionalDouble.of(treated(steel.heatTreatment(), lines.fullAusteniteCelsius(most))));
  }

  private static double treated(HeatTreatment sheet, double fullC) {
    return Stream.of(sheet.normalize(), sheet.harden(), sheet.anneal())
        .flatMap(Optional::stream)
        .mapToDouble(TemperatureRange::highC)
        .reduce(fullC + ABOVE_AUSTENITE_KELVIN, Math::max);
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
