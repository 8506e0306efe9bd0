package seamsoak.pairing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import seamsoak.property.Correlations;
import seamsoak.steel.Element;
import seamsoak.steel.Limits;
import seamsoak.steel.SheetQuench;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;
import seamsoak.steel.UnknownMake;

/**
 * What stock of unknown make asks for, by each of the grades it may be, and from the least to the
 * most of them all.
 *
 * @param stock what it is called
 * @param reckonedAs the likeliest, with which answers reckon until a test says otherwise
 * @param carbonPct from the least to the most
 * @param ac1C of all of them
 * @param upperC Ac3 or Accm of all of them
 * @param hardenC of those that harden
 * @param edgeHrc as quenched at a thin edge, of those that harden
 * @param grades each by itself, the likeliest first
 * @param test what to do first
 * @param standing how well the grades are known
 */
public record MayBe(
    String stock,
    String reckonedAs,
    Span carbonPct,
    Span ac1C,
    Span upperC,
    Optional<Span> hardenC,
    Optional<Span> edgeHrc,
    List<Grade> grades,
    String test,
    String standing) {
  public MayBe {
    grades = List.copyOf(grades);
  }

  /** From the least to the most. */
  public record Span(double low, double high) {
    private static Span of(DoubleStream all) {
      double[] each = all.sorted().toArray();
      return new Span(each[0], each[each.length - 1]);
    }

    private static Optional<Span> of(List<Grade> grades, Function<Grade, Optional<Span>> what) {
      List<Span> known = grades.stream().flatMap(g -> what.apply(g).stream()).toList();
      return known.isEmpty()
          ? Optional.empty()
          : Optional.of(of(known.stream().flatMapToDouble(s -> DoubleStream.of(s.low, s.high))));
    }
  }

  /**
   * One grade that it may be.
   *
   * @param id of it
   * @param carbonPct what its standard allows
   * @param hardenC from where to where it hardens
   * @param quench by its sheet
   * @param edgeHrc as quenched at a thin edge by itself, where formulas tell
   */
  public record Grade(
      String id,
      Span carbonPct,
      double ac1C,
      double upperC,
      Optional<Span> hardenC,
      Optional<String> quench,
      Optional<Double> edgeHrc) {
    private static Grade of(Correlations k, Steel steel) {
      PairSteel metal = PairSteel.of(k, steel);
      double carbon = steel.analysis().carbon();
      Limits limits = steel.limits(Element.C);
      return new Grade(
          steel.id(),
          new Span(limits.min().orElse(0), limits.max().orElse(carbon)),
          metal.lines().a1Celsius(),
          metal.lines().fullAusteniteCelsius(carbon),
          metal.hardening().map(r -> span(r)),
          steel.heatTreatment().quench().map(SheetQuench::words),
          Hardened.alone(k, metal)
              .map(h -> h.alone(PairAdvisor.USUAL_SECTION_METRES))
              .flatMap(Why.In::hardness)
              .map(Why.Hardness::edgeHrc));
    }

    private static Span span(TemperatureRange r) {
      return new Span(r.lowC(), r.highC());
    }
  }

  public static MayBe of(Correlations k, UnknownMake make) {
    List<Grade> grades = make.mayBe().stream().map(s -> Grade.of(k, s)).toList();
    return new MayBe(
        make.id(),
        make.likeliest().id(),
        Span.of(
            grades.stream()
                .flatMapToDouble(g -> DoubleStream.of(g.carbonPct.low, g.carbonPct.high))),
        Span.of(grades.stream().mapToDouble(Grade::ac1C)),
        Span.of(grades.stream().mapToDouble(Grade::upperC)),
        Span.of(grades, Grade::hardenC),
        Span.of(grades, g -> g.edgeHrc.map(h -> new Span(h, h))),
        grades,
        make.test(),
        make.standing().words());
  }
}
