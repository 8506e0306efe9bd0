package seamsoak.property.hardening;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.MN;
import static seamsoak.steel.Element.MO;
import static seamsoak.steel.Element.NI;
import static seamsoak.steel.Element.SI;
import static seamsoak.steel.Element.V;
import static seamsoak.steel.Element.W;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import seamsoak.numeric.Polyline;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.source.Range;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;
import seamsoak.unit.Temperature;

/**
 * Hardness of tempered martensite by its analysis, for steel without a tempering sheet.
 *
 * <p>HV = HV(HRCq - L(T1)) + sum f(T1) (M - M0)
 *
 * <p>HRCq hardness as quenched, which carries the carbon; L what plain steel loses in an hour at
 * T1, HRC; T1 the heat that does in an hour what the temper does ({@link HollomonJaffe1945}, with
 * the constant of the steel's carbon); f what a wt% of an element adds at that heat, HV; M the
 * element dissolved in the austenite, M0 what the plain steels had of it, wt%. Straight between the
 * heats of the tables, f none up to 205 C; HV and HRC by {@link AstmE140}.
 *
 * <p>f: R.A. Grange, R.W. Baughman, Trans. ASM 48 (1956) 165, as handbooks have it, from memory:
 * the heats there are parameters T(18 + log t) of 20,000 to 30,000 in degrees Rankine and hours.
 * Molybdenum counts half beside 0.5 % chromium or more, as there; tungsten half of molybdenum, a
 * rule of the trade. L: {@link PlainTemperingLoss}.
 *
 * <p>Range: 0.3 to 1.0 %C; Mn 2.1, Si 2.2, Ni 4, Cr 1.2, Mo 0.35, V 0.2, W 0.7 %, at these limits
 * beyond them; no secondary hardening. Error: 3 HRC, which holds nine of ten of the five.
 */
public final class GrangeBaughman1956Tempering extends PublishedFormula {
  private static final double COOLEST_CELSIUS = 100;
  private static final double HOTTEST_CELSIUS = 725;
  private static final double STEP = 12.5;

  /** The coolest heat of the source. */
  private static final double FIRST_CELSIUS = 344;

  private static final List<Range> LIMITS =
      List.of(
          Correlation.range(MN, 0, 2.1),
          Correlation.range(SI, 0, 2.2),
          Correlation.range(NI, 0, 4),
          Correlation.range(CR, 0, 1.2),
          Correlation.range(MO, 0, 0.35),
          Correlation.range(V, 0, 0.2),
          Correlation.range(W, 0, 0.7));

  private final AstmE140 e140;
  private final HollomonJaffe1945 law;
  private final PlainTemperingLoss loss;
  private final Map<Element, NavigableMap<Double, Double>> factors = new EnumMap<>(Element.class);

  GrangeBaughman1956Tempering(
      Coefficients k, PlainTemperingLoss loss, AstmE140 e140, HollomonJaffe1945 law) {
    super(
        k,
        "hardness of tempered martensite by its analysis",
        "HV",
        LIMITS,
        "3 HRC, judgement: nine of ten measured on its plain steels lie within");
    this.e140 = e140;
    this.law = law;
    this.loss = loss;
    for (Element e : List.of(MN, SI, NI, CR, MO, V)) {
      NavigableMap<Double, Double> byHeat = new TreeMap<>();
      k.terms()
          .forEach(
              (term, value) -> {
                String[] words = term.split(" at ");
                if (words.length == 2 && words[0].equals(e.symbol())) {
                  byHeat.put(Double.valueOf(words[1]), value);
                }
              });
      byHeat.put(k.get("none to"), 0.0);
      byHeat.putIfAbsent(FIRST_CELSIUS, 0.0); // vanadium does nothing yet at the first heat
      factors.put(e, byHeat);
    }
  }

  /** What plain steel loses. */
  public PlainTemperingLoss loss() {
    return loss;
  }

  /**
   * The curve of a steel.
   *
   * @param austenite what is dissolved
   * @param quenchedHrc hardness as quenched
   */
  public TemperingCurve curve(Composition austenite, double quenchedHrc) {
    HollomonJaffe1945 own = law.ofCarbon(austenite.carbon());
    NavigableMap<Double, Double> hrc = new TreeMap<>();
    for (double celsius = COOLEST_CELSIUS; celsius <= HOTTEST_CELSIUS; celsius += STEP) {
      hrc.put(
          own.parameter(celsius + Temperature.ZERO_CELSIUS, 1),
          hrc(austenite, quenchedHrc, celsius));
    }
    return new TemperingCurve(own, hrc, k.get("band"), k.source());
  }

  /** Hardness after an hour at a heat, never more than as quenched, HRC. */
  double hrc(Composition austenite, double quenchedHrc, double celsius) {
    double plain = quenchedHrc - loss.hrc(celsius);
    double vickers = e140.vickers(plain);
    Composition at = Correlation.capped(LIMITS, austenite);
    double added = 0;
    for (Element e : factors.keySet()) {
      added += Polyline.at(factors.get(e), celsius) * beyondPlain(at, e);
    }
    return Math.min(quenchedHrc, e140.hrc(vickers + added));
  }

  private double beyondPlain(Composition c, Element e) {
    return switch (e) {
      case MN, SI -> c.percent(e) - k.get("plain " + e.symbol());
      case MO -> {
        boolean besideChromium = c.percent(CR) >= k.get("chromium beside Mo");
        double both = c.percent(MO) + k.get("W as Mo") * c.percent(W);
        yield besideChromium ? both / 2 : both;
      }
      default -> c.percent(e);
    };
  }
}
