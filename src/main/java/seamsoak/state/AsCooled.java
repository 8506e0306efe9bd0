package seamsoak.state;

import seamsoak.billet.Shop;
import seamsoak.billet.Stack;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.heat.HeatCurve;
import seamsoak.heat.Section;
import seamsoak.property.etch.Descent;
import seamsoak.unit.Temperature;

/**
 * What a billet would show, etched as it came out of a step: by the cooling that came last from
 * austenite. What comes hot from the anvil is taken to cool in still air.
 *
 * @param shop the assumptions
 * @param stack its steels
 * @param grains their grain
 */
public record AsCooled(Shop shop, Stack stack, Grain grains) {
  /** A fall through red heat faster than this, s, is a quench: no section cools so in air. */
  private static final double QUENCHED_SECONDS = 3;

  private static final int RED_CELSIUS = 700;
  private static final int DARK_CELSIUS = 500;
  private static final double STEP_KELVIN = 2;

  public static AsCooled of(Shop shop, Stack stack) {
    return new AsCooled(shop, stack, new Grain(shop, stack));
  }

  /** The etch after a step. */
  public EtchBand after(Stage stage) {
    HeatCurve last = stage.lastHeat().orElseGet(() -> HeatCurve.hold(Shop.DULL_KELVIN, 1));
    double grain = grains.number(grains.after(last, 0));
    double peak = last.peakKelvin() - Temperature.ZERO_CELSIUS;
    if (last.endKelvin() > Shop.BLACK_KELVIN + 1) {
      return EtchBand.cooled(shop, stack, stage.piece(), inAir(stage.piece(), peak), grain);
    }
    Descent own = Descent.of(last);
    return own.seconds(RED_CELSIUS, DARK_CELSIUS) < QUENCHED_SECONDS
        ? EtchBand.hardened(shop, stack, stage.piece(), peak)
        : EtchBand.cooled(shop, stack, stage.piece(), own, grain);
  }

  private Descent inAir(Workpiece piece, double peakCelsius) {
    HeatCurve air =
        shop.correlations()
            .sections()
            .austeniteInAir(
                new Section(piece.size().thicknessMetres(), piece.size().widthMetres()),
                Shop.DULL_KELVIN,
                Shop.BLACK_KELVIN)
            .core(STEP_KELVIN);
    return new Descent(peakCelsius, Descent.of(air).seconds());
  }
}
