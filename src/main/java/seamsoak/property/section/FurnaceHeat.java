package seamsoak.property.section;

import java.util.List;
import seamsoak.heat.Course;
import seamsoak.heat.Environment;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Kilns and forges as they heat the face of a piece.
 *
 * <p>e = 0.7 of steel and walls together; film coefficient 10 W/m2/K in a kiln, 40 in a gas forge
 *
 * <p>See {@link Environment} for the formula; EN 1991-1-2 has it with 0.7 and 25 for a fire.
 *
 * <p>Emissivity from the standard, from memory; film coefficients judgement.
 *
 * <p>Range: up to 1300 C.
 *
 * <p>Stated error: none; some 20 % in time, judgement.
 */
public final class FurnaceHeat extends PublishedFormula {

  public FurnaceHeat(Coefficients k) {
    super(
        k,
        "heating in kiln and forge",
        "W/m2",
        List.of(Correlation.celsiusRange(20, 1300)),
        "none stated; some 20 % in time, judgement");
  }

  /** A kiln that is hot when the piece goes in. */
  public Environment kiln(double kelvin) {
    return Environment.steady(kelvin, k.get("kiln film"), k.get("emissivity"));
  }

  /** A kiln that climbs steadily with the piece in it, then holds. */
  public Environment kilnRamp(double fromKelvin, double toKelvin, double kelvinPerHour) {
    return kiln(Course.ramp(fromKelvin, toKelvin, kelvinPerHour / 3600));
  }

  /** A kiln whose temperature goes its own way. */
  public Environment kiln(Course air) {
    return new Environment(air, k.get("kiln film"), k.get("emissivity"));
  }

  /** A gas forge, by the temperature of its gas and walls. */
  public Environment forge(double kelvin) {
    return Environment.steady(kelvin, k.get("forge film"), k.get("emissivity"));
  }
}
