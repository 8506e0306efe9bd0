package seamsoak.property.forging;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * Metal that steel loses to scale in air.
 *
 * <p>k = 57.1 exp(-21720 / T), X = sqrt(2 k t)
 *
 * <p>k in mm2/s, T in K, X thickness of metal lost, t time.
 *
 * <p>J. Birks, W. Jackson, J. Iron Steel Inst. 208 (1970) 81; constant from memory.
 *
 * <p>Range: 700 to 1250 C, judgement: that of {@link Paidassi1958Scaling}.
 *
 * <p>Stated error: not at hand; gives 0.28 to 0.41 of the constant of iron.
 */
public final class BirksJackson1970Scaling extends PublishedFormula implements ScalingConstant {
  private final double factor = k.get("factor");
  private final double activationKelvin = k.get("activation temperature");

  public BirksJackson1970Scaling(Coefficients k) {
    super(
        k,
        "scaling constant of steel",
        "m2/s",
        List.of(Correlation.celsiusRange(700, 1250)),
        "not at hand");
  }

  @Override
  public double squareMetresPerSecond(double kelvin) {
    return factor * Math.exp(-activationKelvin / kelvin);
  }
}
