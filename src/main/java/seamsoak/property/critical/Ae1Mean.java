package seamsoak.property.critical;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.property.correlation.Regression;
import seamsoak.source.Estimate;
import seamsoak.source.Exceeded;
import seamsoak.steel.Composition;

/**
 * The lower critical temperature that the program uses.
 *
 * <p>Ae1 = mean of what Andrews, Grange and Hougardy give
 *
 * <p>Ae1 in C, elements in wt%.
 *
 * <p>Our recommendation: over the blade steels the three lie within about 12 C of their mean.
 *
 * <p>Range: that of the three; finite beyond it, as they are.
 *
 * <p>Band: 12 C either way, judgement: the spread of the three. Measured Ac1 scatters more, from 23
 * C below to 19 C above the mean in the 16 published values we hold, so what must not change stays
 * 25 C below it, judgement.
 */
public final class Ae1Mean extends PublishedFormula {
  /** Why this one is used, for answers. */
  public static final String WHY =
      "Ac1 is the mean of Andrews, Grange and Hougardy: over blade steels the three lie within"
          + " about 12 C of it, while Eldis runs 15 to 20 C low on plain steel and the sign of"
          + " nickel in Kasatkin is doubtful.";

  private final List<Regression> members;

  Ae1Mean(Coefficients k, List<Regression> members) {
    super(
        k,
        "Ae1",
        "C",
        List.of(),
        "12 C either way, judgement; 16 measured values lie 23 below to 19 above");
    this.members = List.copyOf(members);
  }

  /** The formulas it is the mean of. */
  public List<Regression> members() {
    return members;
  }

  /** The mean in C. */
  public double celsius(Composition c) {
    double sum = 0;
    for (Regression member : members) {
      sum += member.celsius(c);
    }
    return sum / members.size();
  }

  /** How far below it, and below a published figure, surely nothing changes yet, K. */
  public double subCriticalMarginKelvin() {
    return k.get("sub-critical margin");
  }

  /** The mean in C with its band and the ranges that any of the three left. */
  public Estimate estimate(Composition c) {
    double value = celsius(c);
    double band = k.get("band");
    Set<Exceeded> exceeded = new LinkedHashSet<>();
    members.forEach(m -> exceeded.addAll(m.exceeded(c)));
    return new Estimate(value, value - band, value + band, k.source(), List.copyOf(exceeded));
  }
}
