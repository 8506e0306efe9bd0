package seamsoak.billet;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import seamsoak.carbon.Plane;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Strip;
import seamsoak.carbon.Zones;

/**
 * A line whose two ends are welded to each other, again and again, as through tiles whose faces are
 * unlike. It is parted where least flows: in the piece nearest to its middle, far from the seams
 * about that, and there in the middle of a layer. Of few layers two rounds are kept, so that the
 * tile seam lies far from that too.
 */
final class TileLoop {
  private static final int FEW = 4;

  private TileLoop() {}

  static Strip of(Strip once, SeamName joins) {
    Strip whole = Zones.of(once).length <= FEW ? once.weldedTo(once, joins) : once;
    int[] zones = Zones.of(whole);
    int[] pieces =
        IntStream.concat(
                IntStream.of(0, whole.cells()),
                whole.planes().stream().filter(TileLoop::partsPieces).mapToInt(Plane::face))
            .distinct()
            .sorted()
            .toArray();
    int piece = nearest(whole, pieces, whole.metres() / 2, z -> true);
    double middle = middle(whole, pieces, piece);
    // a stretch of one cell cannot be parted
    int zone = nearest(whole, zones, middle, z -> zones[z + 1] - zones[z] > 1);
    double target = middle(whole, zones, zone);
    int face = zones[zone] + 1;
    while (face + 1 < zones[zone + 1] && whole.metres(0, face) < target) {
      face++;
    }
    return whole.part(face, whole.cells()).weldedTo(whole.part(0, face), joins);
  }

  private static boolean partsPieces(Plane plane) {
    return plane.name().kind() != SeamName.Kind.LAYERS;
  }

  /** The stretch between two of the faces whose middle lies nearest to a place. */
  private static int nearest(Strip strip, int[] faces, double metres, IntPredicate may) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int z = 0; z + 1 < faces.length; z++) {
      double off = Math.abs(middle(strip, faces, z) - metres);
      if (may.test(z) && off < least) {
        least = off;
        best = z;
      }
    }
    return best;
  }

  private static double middle(Strip strip, int[] faces, int stretch) {
    return 0.5 * (strip.metres(0, faces[stretch]) + strip.metres(0, faces[stretch + 1]));
  }
}
