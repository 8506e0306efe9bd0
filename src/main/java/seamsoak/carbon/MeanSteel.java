package seamsoak.carbon;

import java.util.List;

/** The mean of layers so thin that what follows cannot tell them apart. */
public final class MeanSteel {
  private MeanSteel() {}

  /** The strip of one metal throughout, with all its carbon, shared out as its activity is. */
  public static Strip of(Strip layers, Metal mean) {
    CarbonLaw.Isotherm[] laws = new CarbonLaw.Isotherm[layers.metals().size()];
    CarbonLaw.Isotherm own = mean.law().at(CarbonLaw.COMPARED_AT_KELVIN);
    double[] ratio = new double[layers.cells()];
    double sum = 0;
    for (int i = 0; i < ratio.length; i++) {
      int m = layers.metalIndex(i);
      if (laws[m] == null) {
        laws[m] = layers.metal(i).law().at(CarbonLaw.COMPARED_AT_KELVIN);
      }
      ratio[i] = own.ratioBeside(laws[m], layers.ratio(i));
      sum += layers.metres(i) * ratio[i];
    }
    double factor = sum > 0 ? layers.carbon() / sum : 1;
    return new Strip(
            List.of(mean),
            new int[ratio.length],
            layers.thicknesses(),
            ratio,
            layers.planes(),
            layers.scaledMetres(),
            layers.farScaledMetres())
        .enriched(factor);
  }
}
