package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Metal that pure iron loses to scale in air.
 *
 * <p>W^2 = kp t, kp = 6.1 exp(-169452 / (R T)); X = W / (0.3016 rho), k = kp / (2 (0.3016 rho)^2)
 *
 * <p>W oxygen taken up in g/cm2, kp in g2/cm4/s, T in K, R = 8.314 J/mol/K, X thickness of metal
 * lost, 0.3016 g oxygen per g iron in Fe0.95O, rho = 7.6 g/cm3.
 *
 * <p>J. Paidassi, Acta Metall. 6 (1958) 184, as given by R.Y. Chen, W.Y.D. Yuen, Oxid. Met. 59
 * (2003) 433; constant from memory.
 *
 * <p>Range: 700 to 1250 C.
 *
 * <p>Stated error: not at hand.
 */
public final class Paidassi1958Scaling extends PublishedFormula implements ScalingConstant {
  private static final double SQUARE_CENTIMETRE = 1e-4;

  private final double factor;
  private final double activationJoules = k.get("activation energy");

  public Paidassi1958Scaling(Coefficients k) {
    super(
        k,
        "scaling constant of iron",
        "m2/s",
        List.of(Correlation.celsiusRange(700, 1250)),
        "not at hand");
    double oxygenPerVolume = k.get("oxygen per iron") * k.get("iron density");
    this.factor = k.get("factor") / (2 * oxygenPerVolume * oxygenPerVolume) * SQUARE_CENTIMETRE;
  }

  @Override
  public double squareMetresPerSecond(double kelvin) {
    return factor * Math.exp(-activationJoules / (8.314 * kelvin));
  }
}
