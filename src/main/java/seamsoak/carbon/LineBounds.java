package seamsoak.carbon;

/**
 * The metal that a line at a seam is held against.
 *
 * @param face where the seam lies
 * @param from first cell after the seam before it
 * @param to last cell before the seam after it, exclusive
 * @param cells of the strip
 */
record LineBounds(int face, int from, int to, int cells) {
  static LineBounds of(Strip strip, Plane plane) {
    int from = 0;
    int to = strip.cells();
    for (Plane p : strip.planes()) {
      if (p.face() < plane.face()) {
        from = Math.max(from, p.face());
      } else if (p.face() > plane.face()) {
        to = Math.min(to, p.face());
      }
    }
    return new LineBounds(plane.face(), from, to, strip.cells());
  }

  /** The cell with the most on the near side, -1 where there is no near side. */
  private int nearPeak(double[] percent) {
    return peak(percent, 0, face);
  }

  /** The cell with the most on the far side, -1 where there is none. */
  private int farPeak(double[] percent) {
    return peak(percent, face, cells);
  }

  private static int peak(double[] percent, int from, int to) {
    int best = -1;
    for (int i = from; i < to; i++) {
      if (best < 0 || percent[i] > percent[best]) {
        best = i;
      }
    }
    return best;
  }

  /** The highest carbon that both sides come to: without it on both there is no line between. */
  double most(double[] percent) {
    int near = nearPeak(percent);
    int far = farPeak(percent);
    return near < 0 || far < 0
        ? percent[Math.max(near, far)]
        : Math.min(percent[near], percent[far]);
  }

  /** How far the line may reach on the near side: to the next seam, or to where most carbon is. */
  int nearEnd(double[] percent) {
    return Math.max(from, nearPeak(percent));
  }

  /** The same on the far side. */
  int farEnd(double[] percent) {
    return Math.min(to - 1, farPeak(percent));
  }
}
