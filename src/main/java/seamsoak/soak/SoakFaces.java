package seamsoak.soak;

import java.util.Optional;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.carbon.StripSolver;
import seamsoak.heat.HeatCurve;
import seamsoak.state.Skin;

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

  /** The faces after a soak; empty when the scale meets in the middle before its end. */
  Optional<Left> after(HeatCurve curve) {
    try {
      StripSolver.Advanced flat = heated(piece.thickness(), curve);
      StripSolver.Advanced side = heated(piece.width(), curve);
      return Optional.of(
          new Left(
              flat.metalLost(),
              Skin.of(
                  piece,
                  flat.strip(),
                  side.strip(),
                  shop.correlations().hardening().asQuenched())));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private StripSolver.Advanced heated(SectionLine line, HeatCurve curve) {
    return shop.solver().advance(line.toMiddle(), curve, outside);
  }
}
