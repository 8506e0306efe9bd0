package seamsoak.soak;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.StripSolver.Advanced;
import seamsoak.heat.HeatCurve;
import seamsoak.state.Skin;
import seamsoak.unit.Temperature;

/**
 * What a soak does to the faces of a piece.
 *
 * @param piece before it
 * @param shop the assumptions
 * @param outside edge of its faces
 */
record SoakFaces(Workpiece piece, Shop shop, Edge outside) {
  /** Metal that scale takes off a flat, and the skins. */
  record Left(double lostMetres, Skin skin) {}

  /**
   * The faces after soaks at one heat, by their minutes: a longer one is a shorter one that goes
   * on. Those are left out in which the scale meets in the middle before their end.
   */
  Map<Double, Left> after(double celsius, List<Double> minutes) {
    Map<Double, Left> all = new HashMap<>();
    StripSolver solver = shop.solver();
    Advanced flat = new Advanced(piece.thickness().toMiddle(), 0, 0, 0);
    Advanced side = new Advanced(piece.width().toMiddle(), 0, 0, 0);
    double lost = 0;
    double held = 0;
    try {
      for (double m : minutes.stream().sorted().distinct().toList()) {
        double seconds = (m - held) * 60;
        HeatCurve curve =
            all.isEmpty()
                ? SoakAdvisor.curve(celsius, seconds)
                : HeatCurve.hold(celsius + Temperature.ZERO_CELSIUS, seconds);
        flat = solver.advance(flat.strip(), curve, outside);
        side = solver.advance(side.strip(), curve, outside);
        lost += flat.metalLost();
        held = m;
        Skin skin =
            Skin.of(
                piece, flat.strip(), side.strip(), shop.correlations().hardening().asQuenched());
        all.put(m, new Left(lost, skin));
      }
    } catch (IllegalArgumentException e) {
      return all; // all of the metal is scaled away
    }
    return all;
  }
}
