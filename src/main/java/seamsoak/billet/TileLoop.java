package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import seamsoak.carbon.Plane;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Strip;

/**
 * A line whose two ends are welded to each other, again and again, as through tiles whose faces are
 * unlike. It is parted in the middle of a piece instead, where nothing flows.
 */
final class TileLoop {
  private TileLoop() {}

  static Strip of(Strip whole, SeamName joins) {
    List<Double> ends = new ArrayList<>(List.of(0.0));
    double[] at = new double[whole.cells() + 1];
    for (int i = 0; i < whole.cells(); i++) {
      at[i + 1] = at[i] + whole.metres(i);
    }
    for (Plane p : whole.planes()) {
      if (p.name().kind() != SeamName.Kind.LAYERS) {
        ends.add(at[p.face()]);
      }
    }
    ends.add(at[whole.cells()]);
    int face = 1;
    double middle = middleOfPiece(ends);
    while (at[face] < middle || hasSeam(whole, face)) {
      face++;
    }
    return whole.part(face, whole.cells()).weldedTo(whole.part(0, face), joins);
  }

  /** Of the piece that lies nearest to the middle of them all. */
  private static double middleOfPiece(List<Double> ends) {
    double half = ends.get(ends.size() - 1) / 2;
    double best = Double.POSITIVE_INFINITY;
    for (int i = 1; i < ends.size(); i++) {
      double middle = 0.5 * (ends.get(i - 1) + ends.get(i));
      best = Math.abs(middle - half) < Math.abs(best - half) ? middle : best;
    }
    return best;
  }

  private static boolean hasSeam(Strip whole, int face) {
    return whole.planes().stream().anyMatch(p -> p.face() == face);
  }
}
