package seamsoak.property.forging;

import static seamsoak.steel.Element.CR;
import static seamsoak.steel.Element.P;
import static seamsoak.steel.Element.S;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import seamsoak.property.correlation.CoefficientTable;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.source.Estimate;
import seamsoak.source.Exceeded;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;

/**
 * Forging limits of an analysis.
 *
 * <p>Highest forging temperature: the one published for the grade, or else the handbook line by
 * carbon. Burning: the handbook line by carbon. Stainless steel takes the lower of the line by
 * carbon and the handbook's row for stainless. Refusal: min(burning, solidus - 50), with 0.02 % P
 * and 0.02 % S where the analysis of a steel names none.
 *
 * <p>Temperatures in C, carbon in wt%.
 *
 * <p>Sources: {@link CarbonLine} and {@link Hirai1997Solidus}. The burning line lies 20 to 160 C
 * below the equilibrium solidus of iron and carbon: segregation, phosphorus and sulfur explain it,
 * so the equilibrium solidus is no limit of safety. The 50 C are judgement.
 *
 * <p>The burning line is that of older, dirtier steel: of today's it says where to watch, not where
 * it burns. Bearing steel (1.0 %C, for which it gives 1196 C) is soaked for 20 h at 1200 C in the
 * mill without harm (Khan, Metals 8 (2018) 800), and smiths weld 0.75 to 0.95 %C at 1230 to 1300 C
 * (common practice). So what this program advises stays below it, a heat of the smith's own above
 * it gets a caution, and only one above the stop is refused.
 *
 * <p>Range: that of its sources. Error: none stated; the band spans the sources.
 *
 * @param highestForging the handbook line of the highest forging temperature
 * @param burning the handbook line of the burning temperature
 * @param safeForging a second handbook's highest safe forging temperature, from memory
 * @param stainlessRow the handbook's row for stainless steel
 * @param refusalRow the rule for the highest temperature that is advised at all
 * @param solidus where the first liquid forms
 */
public record ForgingRule(
    CarbonLine highestForging,
    CarbonLine burning,
    CarbonLine safeForging,
    Coefficients stainlessRow,
    Coefficients refusalRow,
    Hirai1997Solidus solidus) {
  /** Why the forging limit is what it is, for answers. */
  public static final String WHY =
      "Forging limit: the start published for the grade; where there is none, the handbook line"
          + " by carbon. The second handbook only widens the band.";

  /** From the tables of all correlations. */
  public static ForgingRule of(CoefficientTable table, Hirai1997Solidus solidus) {
    return new ForgingRule(
        new CarbonLine(table.of("brady-highest-forging"), "highest forging temperature"),
        new CarbonLine(table.of("brady-burning"), "burning temperature"),
        new CarbonLine(table.of("asm14-safe-forging"), "highest safe forging temperature"),
        table.of("brady-stainless"),
        table.of("refusal-limit"),
        solidus);
  }

  /** What the handbook's row for stainless steel says about itself. */
  public Correlation stainless() {
    return stainlessRow.describe("forging and burning of stainless steel", "C", List.of(), "none");
  }

  /** Whether the row for stainless steel speaks for an analysis. */
  public boolean isStainless(Composition c) {
    return c.percent(CR) >= stainlessRow.get("least chromium");
  }

  /** The rule for the highest temperature that is advised at all. */
  public Correlation refusal() {
    return refusalRow.describe(
        "allowance below the solidus for the highest soak, P and S where an analysis names none",
        "C and wt%",
        List.of(),
        "none");
  }

  /** The limits; {@code publishedCelsius} is the forge start published for the grade, if any. */
  public ForgingLimits limits(Composition c, OptionalDouble publishedCelsius) {
    double carbon = c.carbon();
    double byLine = highestForging.celsius(carbon);
    double burns = burning.celsius(carbon);
    if (isStainless(c)) {
      byLine = Math.min(byLine, stainlessRow.get("highest forging"));
      burns = Math.min(burns, stainlessRow.get("burning"));
    }
    double value = publishedCelsius.orElse(byLine);
    double bySafe = safeForging.celsius(carbon);
    double melts = solidus.celsius(withResiduals(c));
    double stop = melts - refusalRow.get("below solidus");
    List<Exceeded> exceeded = new ArrayList<>(solidus.exceeded(c));
    if (publishedCelsius.isEmpty()) {
      exceeded.addAll(highestForging.correlation().exceeded(c));
    }
    exceeded.addAll(burning.correlation().exceeded(c));
    return new ForgingLimits(
        new Estimate(
            value,
            DoubleStream.of(value, byLine, bySafe).min().getAsDouble(),
            DoubleStream.of(value, byLine, bySafe).max().getAsDouble(),
            publishedCelsius.isPresent()
                ? "grade-forging"
                : highestForging.correlation().sourceKey(),
            exceeded),
        burns,
        stop,
        melts,
        Math.min(burns, stop));
  }

  /** Steel has phosphorus and sulfur even where its analysis names none. */
  private Composition withResiduals(Composition c) {
    Composition with = c;
    for (Element e : List.of(P, S)) {
      if (c.percent(e) == 0 && c.iron() > 50) {
        with = with.with(e, refusalRow.get("assumed " + e.symbol()));
      }
    }
    return with;
  }
}
