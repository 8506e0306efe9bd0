package seamsoak.words;

import seamsoak.property.forging.LeeLee2008GrainGrowth;

/** How sure a grain size is. */
public final class GrainWords {
  /** Of any. */
  public static final String GIVE_OR_TAKE =
      Amounts.format(
          "%.1f coarser to %.1f finer", LeeLee2008GrainGrowth.COARSER, LeeLee2008GrainGrowth.FINER);

  private GrainWords() {}

  /** A grain size number with its band. */
  static String band(double astm) {
    return Amounts.format(
        "%.0f (%.0f to %.0f)",
        astm, astm - LeeLee2008GrainGrowth.COARSER, astm + LeeLee2008GrainGrowth.FINER);
  }
}
