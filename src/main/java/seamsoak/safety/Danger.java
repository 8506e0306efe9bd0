package seamsoak.safety;

import seamsoak.billet.Can;
import seamsoak.billet.Coating;

/** Why something must not be done as planned. */
public sealed interface Danger {
  /** A jacket whose coating turns to poisonous fume. */
  record CoatedJacket(Coating coating) implements Danger {}

  /** A can with something in it that makes gas, and no hole that is known of. */
  record SealedCan(Can.Inside inside) implements Danger {}

  /** A bath of nitrate salt hotter than it may ever be. */
  record HotSalt(double celsius) implements Danger {}

  /**
   * A bath of oil too near its flash point.
   *
   * @param celsius it is kept at
   * @param bladeWarmsKelvin what a blade warms it by
   * @param flashC where it flashes
   * @param ofLabel whether that is its own flash point, not that of such oil
   */
  record HotOil(double celsius, double bladeWarmsKelvin, double flashC, boolean ofLabel)
      implements Danger {}

  /**
   * A heat at which a steel melts or nearly does.
   *
   * @param stopCelsius above which it is refused, some way below its first melting
   */
  record Melts(String steel, double celsius, double stopCelsius) implements Danger {}

  /**
   * A weld too cold to be one.
   *
   * @param leastCelsius from which steel welds readily
   */
  record NoWeld(double celsius, double leastCelsius) implements Danger {}

  /** A blade to be brought in nitrate salt to a heat that it must never have. */
  record NitrateHeat(double celsius) implements Danger {}
}
