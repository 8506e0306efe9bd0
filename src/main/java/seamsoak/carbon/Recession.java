package seamsoak.carbon;

/**
 * Scale eating its way into a strip from its edges. At each it eats the zone up to the next seam or
 * other metal, whose cells shrink together: each keeps its share of what is left, and the faces
 * between them move through the metal (an arbitrary Lagrangian-Eulerian grid), so that nothing has
 * to be cut anew within a heat. Seams are never moved through.
 */
final class Recession {
  private final double[] startMetres;
  private final double[] share;
  private final int nearCells;
  private final int farFrom;
  private final double nearZone;
  private final double farZone;
  private final Eaten near = new Eaten();
  private final Eaten far = new Eaten();
  private double stepSeconds = 1;
  private double stepStart;
  private double nearLeft = 1;
  private double farLeft = 1;

  /** Speeds of the faces that the fluxes added to last carry, m/s. */
  private double nearCarried;

  private double farCarried;

  /** Metal eaten at one edge since the strip was taken up, at the ends of a step, m. */
  private static final class Eaten {
    private double atStart;
    private double atEnd;

    double at(double part) {
      return atStart + (atEnd - atStart) * part;
    }
  }

  Recession(Strip strip) {
    int[] zones = Zones.of(strip);
    startMetres = strip.thicknesses();
    nearCells = zones[1];
    farFrom = zones[zones.length - 2];
    nearZone = strip.metres(0, nearCells);
    farZone = strip.metres(farFrom, startMetres.length);
    // by face: the share of its zone that lies before it
    share = new double[startMetres.length + 1];
    fill(0, nearCells, nearZone);
    if (farFrom > 0) {
      fill(farFrom, startMetres.length, farZone);
    }
  }

  private void fill(int from, int to, double whole) {
    double before = 0;
    for (int i = from; i < to; i++) {
      share[i] = before;
      before += startMetres[i] / whole;
    }
    if (to == startMetres.length) {
      share[to] = 1;
    }
  }

  /** Whether both edges eat the same zone. */
  boolean oneZone() {
    return farFrom == 0;
  }

  /** Cells of the zone at the near edge. */
  int nearCells() {
    return nearCells;
  }

  /** First cell of the zone at the far edge. */
  int farFrom() {
    return farFrom;
  }

  /** Metal that is left to eat at the near edge, m, when so much has gone at both. */
  double nearMetres(double nearEaten, double farEaten) {
    return nearZone - nearEaten - (oneZone() ? farEaten : 0);
  }

  double farMetres(double nearEaten, double farEaten) {
    return farZone - farEaten - (oneZone() ? nearEaten : 0);
  }

  /** Metal eaten since the strip was taken up, at the ends of the next step, m. */
  void eat(double nearAtStart, double nearAtEnd, double farAtStart, double farAtEnd) {
    near.atStart = nearAtStart;
    near.atEnd = nearAtEnd;
    far.atStart = farAtStart;
    far.atEnd = farAtEnd;
  }

  void beginStep(double startSeconds, double endSeconds) {
    stepStart = startSeconds;
    stepSeconds = endSeconds - startSeconds;
  }

  /** Sets the cells' thickness at a time within the step. */
  void moveTo(double seconds, double[] metres) {
    double part = (seconds - stepStart) / stepSeconds;
    double n = near.at(part);
    double f = far.at(part);
    double left = nearMetres(n, f) / nearZone;
    if (left != nearLeft) {
      nearLeft = left;
      shrink(metres, 0, nearCells, left);
    }
    if (oneZone()) {
      return;
    }
    left = farMetres(n, f) / farZone;
    if (left != farLeft) {
      farLeft = left;
      shrink(metres, farFrom, metres.length, left);
    }
  }

  private void shrink(double[] metres, int from, int to, double left) {
    for (int i = from; i < to; i++) {
      metres[i] = startMetres[i] * left;
    }
  }

  /** The fluxes that are added to next carry no moving faces yet. */
  void startAnew() {
    nearCarried = 0;
    farCarried = 0;
  }

  /**
   * Adds what the moving faces pass over, less what the fluxes carry of it from a step before; at
   * the edges it is lost.
   */
  void addTo(
      double[] metres,
      double[] y,
      OuterFace nearFace,
      OuterFace farFace,
      double[] flux,
      double[] byLeft,
      double[] byRight) {
    double nearSpeed = (near.atEnd - near.atStart) / stepSeconds;
    double farSpeed = (far.atEnd - far.atStart) / stepSeconds;
    double nearMore = nearSpeed - nearCarried;
    double farMore = farSpeed - farCarried;
    nearCarried = nearSpeed;
    farCarried = farSpeed;
    int n = metres.length;
    if (nearMore != 0) {
      if (nearFace.takesFrom(y[0])) {
        flux[0] -= nearMore * nearFace.ratio();
      } else {
        flux[0] -= nearMore * y[0];
        byRight[0] -= nearMore;
      }
      double back = oneZone() ? farMore : 0;
      for (int f = 1; f < nearCells; f++) {
        move(nearMore * (1 - share[f]) - back * share[f], f, metres, y, flux, byLeft, byRight);
      }
    }
    if (farMore != 0) {
      if (farFace.takesFrom(y[n - 1])) {
        flux[n] += farMore * farFace.ratio();
      } else {
        flux[n] += farMore * y[n - 1];
        byLeft[n] += farMore;
      }
      boolean done = oneZone() && nearMore != 0;
      for (int f = farFrom + 1; f < n && !done; f++) {
        move(-farMore * share[f], f, metres, y, flux, byLeft, byRight);
      }
    }
  }

  /** A face that moves towards the far edge takes carbon from the cell there to the one before. */
  private static void move(
      double speed,
      int f,
      double[] metres,
      double[] y,
      double[] flux,
      double[] byLeft,
      double[] byRight) {
    double toRight = metres[f - 1] / (metres[f - 1] + metres[f]);
    flux[f] -= speed * ((1 - toRight) * y[f - 1] + toRight * y[f]);
    byLeft[f] -= speed * (1 - toRight);
    byRight[f] -= speed * toRight;
  }
}
