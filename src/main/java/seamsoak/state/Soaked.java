package seamsoak.state;

import java.util.List;
import java.util.Optional;
import seamsoak.billet.Heat;
import seamsoak.billet.HeatDone;
import seamsoak.billet.HeatDone.Held;
import seamsoak.billet.HeatDone.Logged;
import seamsoak.billet.Now;
import seamsoak.billet.Step;
import seamsoak.heat.HeatCurve;

/**
 * The soaks that were done since the metal was last forged.
 *
 * @param minutes in all
 * @param hottestC of them
 */
public record Soaked(double minutes, double hottestC) {
  /** A logged hold counts within that of its hottest, K, as holds are counted. */
  private static final double NEAR_KELVIN = 15;

  /** Empty where none was. */
  static Optional<Soaked> of(List<Now.Done> done) {
    double minutes = 0;
    double hottest = 0;
    for (int i = done.size() - 1; i >= 0 && !forges(done.get(i).step().kind()); i--) {
      if (done.get(i).step().kind() == Step.Kind.SOAK && done.get(i).planned().isPresent()) {
        Heat planned = done.get(i).planned().get();
        HeatDone.How how = done.get(i).done().map(HeatDone::how).orElseGet(HeatDone.AsPlanned::new);
        minutes += minutes(planned, how);
        hottest = Math.max(hottest, celsius(planned, how));
      }
    }
    return minutes > 0 ? Optional.of(new Soaked(minutes, hottest)) : Optional.empty();
  }

  private static boolean forges(Step.Kind kind) {
    return switch (kind) {
      case WELD, DRAW, PRESS, ROLL, RESTACK, TILE, TWIST -> true;
      case GRIND, UNJACKET, SOAK, ANNEAL, NORMALIZE, REFINE, RELIEVE, HARDEN, TEMPER, COOL -> false;
    };
  }

  private static double minutes(Heat planned, HeatDone.How how) {
    if (how instanceof Logged logged) {
      HeatCurve curve = logged.curve().curve();
      return curve.above(curve.peakKelvin() - NEAR_KELVIN).seconds() / 60;
    }
    return how instanceof Held held ? held.hold().minutes() : planned.hold().minutes();
  }

  private static double celsius(Heat planned, HeatDone.How how) {
    if (how instanceof Logged logged) {
      return logged.curve().hottest().celsius();
    }
    return how instanceof Held held ? held.at().celsius() : planned.at().celsius();
  }
}
