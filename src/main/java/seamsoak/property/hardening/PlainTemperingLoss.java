package seamsoak.property.hardening;

import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import seamsoak.numeric.Polyline;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.PublishedFormula;

/**
 * What plain carbon steel loses of its hardness as quenched in a temper of one hour.
 *
 * <p>Rockwell C against the heat in C: straight between the heats of the table, none below its
 * first, on along the last slope beyond its last.
 *
 * <p>Mean of five plain steels of 0.31 to 0.89 %C that Hollomon and Jaffe (1945) and Grange and
 * Baughman (1956) tempered, read in a second-hand table; other lengths counted as one hour by
 * {@link HollomonJaffe1945#ofCarbon}. What it loses hardly depends on its carbon.
 *
 * <p>Range: 0.3 to 0.9 %C, 100 to 700 C. Error: the 39 figures lie within 3.3 HRC of it.
 */
public final class PlainTemperingLoss extends PublishedFormula {
  /** An hour at this heat takes nothing yet, C. */
  private static final double NONE_TO_CELSIUS = 100;

  private final NavigableMap<Double, Double> byHeat;

  PlainTemperingLoss(Coefficients k) {
    super(
        k,
        "hardness that plain steel loses in a temper",
        "HRC",
        List.of(Correlation.celsiusRange(100, 700)),
        "3.3 HRC, the most that the figures behind it differ from it");
    this.byHeat = new TreeMap<>(k.points());
    byHeat.put(NONE_TO_CELSIUS, 0.0);
  }

  /** What an hour at a heat takes, HRC. */
  double hrc(double celsius) {
    double end = byHeat.lastKey();
    return celsius <= end
        ? Polyline.at(byHeat, celsius)
        : Polyline.through(byHeat.lowerEntry(end), byHeat.lastEntry(), celsius);
  }
}
