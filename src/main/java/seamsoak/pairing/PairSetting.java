package seamsoak.pairing;

import java.util.OptionalDouble;

/**
 * How two steels are put together.
 *
 * @param firstMetres thickness of the layers of the first, m
 * @param secondMetres of the second, m
 * @param sectionMetres thickness of the piece when it is hardened, m
 * @param weldingCelsius welding heat; empty for the usual one
 * @param sealed whether the stack is closed against the fire
 */
public record PairSetting(
    double firstMetres,
    double secondMetres,
    double sectionMetres,
    OptionalDouble weldingCelsius,
    boolean sealed) {

  /** The welding heat of two steels: as asked or usual, or what the more delicate stands, C. */
  public double heat(double usualCelsius, PairSteel a, PairSteel b) {
    return Math.min(
        weldingCelsius.orElse(usualCelsius), Math.min(a.welding().highC(), b.welding().highC()));
  }

  /** Share of the first steel, 0 to 1. */
  public double share() {
    return firstMetres / (firstMetres + secondMetres);
  }

  /** A layer of each, m. */
  public double periodMetres() {
    return firstMetres + secondMetres;
  }

  /** The same in a closed stack. */
  public PairSetting inClosedStack() {
    return new PairSetting(firstMetres, secondMetres, sectionMetres, weldingCelsius, true);
  }

  /** The same welded at another heat. */
  public PairSetting weldedAt(double celsius) {
    return new PairSetting(
        firstMetres, secondMetres, sectionMetres, OptionalDouble.of(celsius), sealed);
  }

  /** The same with all layers thicker by a factor. */
  public PairSetting thicker(double factor) {
    return new PairSetting(
        factor * firstMetres, factor * secondMetres, sectionMetres, weldingCelsius, sealed);
  }
}
