package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.PublishedFormula;

/**
 * The heats at which a steel is forge-welded.
 *
 * <p>highest = what {@link ForgingRule} refuses above; lowest = max(1100, highest - 250); the heat
 * that shops use where nothing forbids it: 1230; below 950 nothing welds
 *
 * <p>In C.
 *
 * <p>Our judgement. Shops weld plain and nickel steel at 1230 to 1260 C and the richer ones at 1150
 * to 1200 C, iron near white heat; a steel far below the heat it can stand does not stick.
 *
 * <p>Range: none. Stated error: none.
 */
public final class WeldingRule extends PublishedFormula {

  WeldingRule(Coefficients k) {
    super(k, "heats for forge welding", "C", List.of(), "none, judgement");
  }

  /** The usual welding heat, C. */
  public double usualCelsius() {
    return k.get("usual");
  }

  /** Lowest heat at which a steel welds readily, C. */
  public double lowestCelsius(ForgingLimits limits) {
    return Math.max(lowestCelsius(), limits.refusalCelsius() - k.get("reach"));
  }

  /** Lowest heat at which any steel welds readily, C. */
  public double lowestCelsius() {
    return k.get("lowest");
  }

  /** Colder than this nothing welds under hammer or press, C. */
  public double noneCelsius() {
    return k.get("none");
  }
}
