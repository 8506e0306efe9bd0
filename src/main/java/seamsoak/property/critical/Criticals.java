package seamsoak.property.critical;

import java.util.List;
import java.util.stream.Stream;
import seamsoak.data.DataFolder;
import seamsoak.property.correlation.CoefficientTable;
import seamsoak.property.correlation.Regression;
import seamsoak.property.correlation.RegressionTable;
import seamsoak.source.Estimate;
import seamsoak.steel.Composition;

/**
 * Every published transformation temperature, and which of them answers use.
 *
 * @param ae1 the lower critical temperature in use
 * @param a3Alloy what alloying adds to the line of ferrite, in use
 * @param accmAlloy what alloying adds to the line of cementite, in use
 * @param ms martensite start, in use
 * @param highCarbonMs the second in use, made for high carbon: the other end of the band
 * @param lower all that give Ae1 or Ac1
 * @param upper all that give Ae3 or Ac3; they part above 0.6 %C
 * @param martensiteStart all that give Ms
 * @param bainiteStart all that give Bs
 */
public record Criticals(
    Ae1Mean ae1,
    Regression a3Alloy,
    Regression accmAlloy,
    Regression ms,
    Regression highCarbonMs,
    List<Regression> lower,
    List<Regression> upper,
    List<Regression> martensiteStart,
    List<Regression> bainiteStart) {

  public static Criticals load(DataFolder data, CoefficientTable coefficients) {
    RegressionTable all = RegressionTable.load(data, coefficients);
    List<Regression> mean =
        Stream.of("andrews1965-ae1", "grange1961-ae1", "hougardy1984-ac1").map(all::of).toList();
    return new Criticals(
        new Ae1Mean(coefficients.of("ae1-mean"), mean),
        all.of("andrews1965-ae3"),
        all.of("lee-lee2007-accm"),
        all.of("van-bohemen2012-ms"),
        all.of("ingber-kunert2022-ms"),
        all.giving("Ae1", "Ac1"),
        all.giving("Ae3", "Ac3"),
        all.giving("Ms"),
        all.giving("Bs"));
  }

  /**
   * Start of martensite of an austenite, C: midway between the two in use, which are the ends. What
   * is measured on plain steel lies above the first and below the second up to 0.9 % carbon.
   */
  public Estimate martensite(Composition austenite) {
    double first = ms.celsius(austenite);
    double second = highCarbonMs.celsius(austenite);
    return new Estimate(
        (first + second) / 2,
        Math.min(first, second),
        Math.max(first, second),
        ms.correlation().sourceKey(),
        ms.exceeded(austenite));
  }
}
