package seamsoak.single;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import seamsoak.pairing.Hardened;
import seamsoak.pairing.MayBe;
import seamsoak.pairing.PairAdvisor;
import seamsoak.pairing.PairSteel;
import seamsoak.pairing.Why;
import seamsoak.property.Correlations;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.correlation.CriticalTemperature;
import seamsoak.property.forging.ForgingLimits;
import seamsoak.property.hardening.HardeningWindow;
import seamsoak.property.phase.PhaseLines;
import seamsoak.source.Estimate;
import seamsoak.source.Exceeded;
import seamsoak.steel.Composition;
import seamsoak.steel.SheetQuench;
import seamsoak.steel.Steel;
import seamsoak.steel.TemperatureRange;

/**
 * One steel: its analysis, critical temperatures and limits.
 *
 * @param id key of the table
 * @param designation standard designation
 * @param aliases other names
 * @param category such as {@code plain carbon}
 * @param analysisPct typical analysis by element symbol, wt%
 * @param ac1C lower critical temperature
 * @param ac3OrAccmC upper critical temperature
 * @param upper which of the two that is
 * @param msC martensite start with the carbon dissolved at the hardening temperature
 * @param dissolvedCarbonPct that carbon
 * @param hardenC the hardening temperature that it was taken at
 * @param solidusC first liquid
 * @param highestForgingC highest forging temperature
 * @param burningC where it burns
 * @param refusalC above this no soak is advised
 * @param ranges published ranges by name, degC
 * @param sheetQuench what its sheet quenches it in
 * @param blade of it hardened by itself; empty where it does not harden
 * @param publishedC published critical temperatures by name, degC
 * @param formulas every formula side by side
 * @param diffusivities every diffusivity of carbon side by side, at the steel's own carbon
 * @param chosen why those that are used are used
 * @param unknown why a temperature is not given, by its name
 * @param exceeded ranges that the recommended formulas left
 * @param notes what else to know
 * @param mayBe where it is stock of unknown make: all its bands are then from the least to the most
 *     of the grades that it may be
 */
public record SteelReport(
    String id,
    String designation,
    List<String> aliases,
    String category,
    Map<String, Double> analysisPct,
    Optional<Quantity> ac1C,
    Optional<Quantity> ac3OrAccmC,
    String upper,
    Optional<Quantity> msC,
    double dissolvedCarbonPct,
    double hardenC,
    Quantity solidusC,
    Quantity highestForgingC,
    Quantity burningC,
    Quantity refusalC,
    Map<String, TemperatureRange> ranges,
    Optional<String> sheetQuench,
    Optional<Blade> blade,
    Map<String, Double> publishedC,
    List<Formula> formulas,
    List<Diffusivity> diffusivities,
    List<String> chosen,
    Map<String, Unknown> unknown,
    List<String> exceeded,
    String notes,
    Optional<MayBe> mayBe) {

  /** A value with its band and where it comes from. */
  public record Quantity(double value, double low, double high, String source) {
    private Quantity over(
        List<SteelReport> grades, Function<SteelReport, Optional<Quantity>> what) {
      List<Quantity> all = grades.stream().flatMap(r -> what.apply(r).stream()).toList();
      return new Quantity(
          value,
          all.stream().mapToDouble(Quantity::low).min().orElse(low),
          all.stream().mapToDouble(Quantity::high).max().orElse(high),
          source);
    }
  }

  /**
   * What one published formula gives.
   *
   * @param name of the formula
   * @param gives the quantity
   * @param valueC its value; unknown where it would lie at absolute zero
   * @param standing how well its numbers are known
   * @param outsideRange whether the analysis lies outside its range
   * @param used what part it has in the temperatures above; empty when none
   */
  public record Formula(
      String name,
      String gives,
      Optional<Double> valueC,
      String standing,
      boolean outsideRange,
      Optional<String> used) {}

  /**
   * A published diffusivity of carbon in one phase.
   *
   * @param name of the formula
   * @param phase austenite or ferrite
   * @param at its values at a few temperatures
   * @param standing how well its numbers are known
   * @param used what part it has in the answers; empty when none
   */
  public record Diffusivity(
      String name, String phase, List<AtTemperature> at, String standing, Optional<String> used) {}

  /** One value, m2/s, and whether steel or temperature lie outside the formula's range. */
  public record AtTemperature(
      double temperatureC, double squareMetresPerSecond, boolean outsideRange) {}

  /**
   * A blade of it, in a shop that has everything.
   *
   * @param thicknessMm at the spine
   * @param quenchant id of what it is quenched in
   * @param quenchantName what the shop calls that
   * @param idealDiameterMm depth of hardening, the round bar that just hardens in a perfect quench
   * @param edgeHrc as quenched at a thin edge; empty where it has too much alloy to tell
   * @param coreHrc as quenched in the middle of the spine
   */
  public record Blade(
      double thicknessMm,
      String quenchant,
      String quenchantName,
      double idealDiameterMm,
      Optional<Double> edgeHrc,
      Optional<Double> coreHrc) {
    private static Blade of(Hardened h) {
      Why.In in = h.alone(PairAdvisor.USUAL_SECTION_METRES);
      return new Blade(
          1e3 * PairAdvisor.USUAL_SECTION_METRES,
          in.bath().id(),
          in.bath().name(),
          1e3 * h.austenite().idealDiameterMetres(),
          in.hardness().map(Why.Hardness::edgeHrc),
          in.hardness().map(Why.Hardness::coreHrc));
    }
  }

  /** Band of the upper critical temperature, C either way; judgement. */
  private static final double UPPER_BAND = 15;

  /** Band of the martensite start beside the spread of the two formulas, C; judgement. */
  private static final double MS_BAND = 15;

  /** What is added by judgement, in words. */
  public static String bands() {
    return String.format(
        Locale.ROOT,
        "Ac3 or Accm %.0f C either way, and Ac3 later on heating; Ms %.0f C beyond its two formulas",
        UPPER_BAND,
        MS_BAND);
  }

  public static SteelReport of(Correlations k, Steel steel) {
    SteelReport one = ofOne(k, steel);
    return steel
        .make()
        .map(
            make ->
                one.spanning(
                    MayBe.of(k, make), make.mayBe().stream().map(s -> ofOne(k, s)).toList()))
        .orElse(one);
  }

  private static SteelReport ofOne(Correlations k, Steel steel) {
    Composition c = steel.analysis();
    PhaseLines lines = k.lines(c);
    Estimate ae1 = k.critical().ae1().estimate(c);
    double upper = lines.fullAusteniteCelsius(c.carbon());
    boolean cementite = lines.carbideLast(c.carbon());
    HardeningWindow window = k.hardening().window();
    double harden = window.heatCelsius(window.of(steel, lines, c.carbon()));
    Composition austenite = k.austenite(lines, c.carbon(), harden).orElse(c);
    Estimate ms = k.critical().martensite(austenite);
    boolean transforms = !lines.alwaysAustenite();
    boolean hardens = ms.value() > CriticalTemperature.ABSOLUTE_ZERO;
    boolean reached = QuenchedSteel.reaches(c);
    ForgingLimits limits = k.forging().rule().limits(c, steel.heatTreatment().forgeStartC());
    Estimate forging = limits.highestForging();
    return new SteelReport(
        steel.key(),
        steel.designation(),
        steel.aliases(),
        steel.category(),
        SteelFigures.analysis(c),
        known(transforms, quantity(ae1)),
        known(
            transforms,
            new Quantity(
                upper,
                upper - UPPER_BAND,
                upper + UPPER_BAND + (cementite ? 0 : window.mostHeatingKelvin()),
                cementite ? "gustafson1985, leelee2007" : "gustafson1985, andrews1965")),
        cementite ? "Accm" : "Ac3",
        known(
            hardens && reached,
            new Quantity(
                ms.value(),
                Math.max(CriticalTemperature.ABSOLUTE_ZERO, ms.low() - MS_BAND),
                ms.high() + MS_BAND,
                "vanbohemen2012, ingberkunert2022")),
        austenite.carbon(),
        harden,
        single(limits.solidusCelsius(), k.forging().solidus().correlation().sourceKey()),
        quantity(forging),
        single(limits.burningCelsius(), k.forging().rule().burning().correlation().sourceKey()),
        single(limits.refusalCelsius(), "judgement"),
        SteelFigures.ranges(steel),
        steel.heatTreatment().quench().map(SheetQuench::words),
        Hardened.alone(k, PairSteel.of(k, steel)).map(Blade::of),
        SteelFigures.published(steel),
        new SideBySide(k, steel, austenite, lines).formulas(),
        new Diffusivities(k, c).all(),
        Stream.concat(SideBySide.CHOSEN.stream(), Stream.of(Diffusivities.CHOSEN)).toList(),
        SteelFigures.unknown(transforms, hardens, reached),
        Stream.of(ae1.exceeded(), forging.exceeded(), k.critical().a3Alloy().exceeded(c))
            .flatMap(List::stream)
            .map(SteelReport::says)
            .distinct()
            .toList(),
        steel.notes(),
        Optional.empty());
  }

  /** The same for stock of unknown make, its bands as wide as those of all that it may be. */
  private SteelReport spanning(MayBe span, List<SteelReport> grades) {
    return new SteelReport(
        id,
        designation,
        aliases,
        category,
        analysisPct,
        ac1C.map(q -> q.over(grades, r -> r.ac1C)),
        ac3OrAccmC.map(q -> q.over(grades, r -> r.ac3OrAccmC)),
        upper,
        msC.map(q -> q.over(grades, r -> r.msC)),
        dissolvedCarbonPct,
        hardenC,
        solidusC.over(grades, r -> Optional.of(r.solidusC)),
        highestForgingC.over(grades, r -> Optional.of(r.highestForgingC)),
        burningC.over(grades, r -> Optional.of(r.burningC)),
        refusalC.over(grades, r -> Optional.of(r.refusalC)),
        ranges,
        sheetQuench,
        blade,
        publishedC,
        formulas,
        diffusivities,
        chosen,
        unknown,
        exceeded,
        notes,
        Optional.of(span));
  }

  private static Optional<Quantity> known(boolean is, Quantity quantity) {
    return is ? Optional.of(quantity) : Optional.empty();
  }

  private static String says(Exceeded e) {
    return String.format(
        Locale.ROOT,
        "%s: %s %.4g %s lies outside %.4g to %.4g",
        e.correlation(),
        e.range().quantity(),
        e.value(),
        e.range().unit(),
        e.range().low(),
        e.range().high());
  }

  private static Quantity quantity(Estimate e) {
    return new Quantity(e.value(), e.low(), e.high(), e.source());
  }

  private static Quantity single(double value, String source) {
    return new Quantity(value, value, value, source);
  }
}
