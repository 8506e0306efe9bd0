package seamsoak.safety;

import seamsoak.billet.Can;
import seamsoak.billet.Coating;

/** Why something must not be done as planned. */
public sealed interface Danger {
  /** What each danger is told by. */
  interface Teller<T> {
    T coatedJacket(CoatedJacket danger);

    T sealedCan(SealedCan danger);

    T hotSalt(HotSalt danger);

    T hotOil(HotOil danger);

    T nitrateHeat(NitrateHeat danger);
  }

  <T> T told(Teller<T> teller);

  /** A jacket whose coating turns to poisonous fume. */
  record CoatedJacket(Coating coating) implements Danger {
    @Override
    public <T> T told(Teller<T> teller) {
      return teller.coatedJacket(this);
    }
  }

  /** A can with something in it that makes gas, and no hole that is known of. */
  record SealedCan(Can.Inside inside) implements Danger {
    @Override
    public <T> T told(Teller<T> teller) {
      return teller.sealedCan(this);
    }
  }

  /** A bath of nitrate salt hotter than it may ever be. */
  record HotSalt(double celsius) implements Danger {
    @Override
    public <T> T told(Teller<T> teller) {
      return teller.hotSalt(this);
    }
  }

  /**
   * A bath of oil too near its flash point.
   *
   * @param celsius it is kept at
   * @param bladeWarmsKelvin what a blade warms it by
   * @param flashC where it flashes
   * @param ofLabel whether that is its own flash point, not that of such oil
   */
  record HotOil(double celsius, double bladeWarmsKelvin, double flashC, boolean ofLabel)
      implements Danger {
    @Override
    public <T> T told(Teller<T> teller) {
      return teller.hotOil(this);
    }
  }

  /** A blade to be brought in nitrate salt to a heat that it must never have. */
  record NitrateHeat(double celsius) implements Danger {
    @Override
    public <T> T told(Teller<T> teller) {
      return teller.nitrateHeat(this);
    }
  }
}
