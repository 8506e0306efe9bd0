package seamsoak.property.section;

import java.util.List;
import seamsoak.heat.Environment;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;
import seamsoak.unit.Temperature;

/**
 * Cooling of a section in still air.
 *
 * <p>At the face e s (T^4 - Ta^4) + h (T - Ta) leaves, see {@link Environment}; within, {@link
 * SectionModel} with the heat and conductivity of {@link En1993Steel}.
 *
 * <p>T in K, Ta of the air; e = 0.8; s = 5.67e-8 W/m2/K4; h = 10 W/m2/K.
 *
 * <p>Emissivity of oxidized steel from published tables; h from memory (5 to 15).
 *
 * <p>Range: 20 to 1200 C, all faces free.
 *
 * <p>Stated error: none; h and the emissivity leave some 15 %, judgement.
 */
public final class AirCooling extends PublishedFormula {
  private final Environment air =
      Environment.steady(
          k.get("ambient") + Temperature.ZERO_CELSIUS, k.get("convection"), k.get("emissivity"));

  public AirCooling(Coefficients k) {
    super(
        k,
        "cooling rate in still air",
        "K/s",
        List.of(Correlation.celsiusRange(20, 1200)),
        "none stated; some 15 % by convection and emissivity, judgement");
  }

  /** Still air. */
  public Environment air() {
    return air;
  }
}
