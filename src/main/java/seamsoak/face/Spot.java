package seamsoak.face;

/**
 * A point of the billet on its way back to the stack: changed from step to step, so that a million
 * of them cost no memory.
 */
final class Spot {
  /** From the middle of the body, along its length, m. */
  double along;

  /** The same across its width. */
  double across;

  /** The same up its thickness. */
  double up;

  /** By restack that turns every other piece, the last one first: a bit, set where it is turned. */
  int way;

  /** By step that lays tiles, the last one first: how far down the tile it lies, 0 to 1. */
  final double[] down;

  private int tilings;

  /** The layer that it lay in, from the top. */
  int layer;

  /** How far down that layer, 0 to 1. */
  double inLayer;

  /** Whether its layers lie on edge, in the tile where it lies in one. */
  boolean onEdge;

  private int turnings;

  Spot(int tilings) {
    down = new double[tilings];
  }

  void begin(double fromAlong, double fromAcross, double fromUp) {
    along = fromAlong;
    across = fromAcross;
    up = fromUp;
    way = 0;
    turnings = 0;
    tilings = 0;
    onEdge = false;
  }

  void tiled(double share) {
    down[tilings++] = share;
    onEdge = false;
  }

  void mayTurn(boolean turned) {
    way |= (turned ? 1 : 0) << turnings++;
  }

  /** Back from a quarter turn about the length, which brings the top to the left. */
  void turn() {
    double was = across;
    across = up;
    up = -was;
    onEdge = !onEdge;
  }
}
