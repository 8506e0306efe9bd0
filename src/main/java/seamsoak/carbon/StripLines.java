package seamsoak.carbon;

import java.util.Arrays;

/** The lines of missing carbon on one strip; what several of them need is worked out once. */
public final class StripLines {
  /** What a probe resolves, m. */
  public static final double PROBE_METRES = 30e-6;

  private final Strip strip;
  private final Scan[] scans;

  public StripLines(Strip strip) {
    this.strip = strip;
    this.scans = new Scan[strip.metals().size()];
  }

  /**
   * Carbon of the cells in one steel, of the spots they lie in, and by face the cell in the spot
   * with the most on either side of it.
   */
  private record Scan(
      SeamSteel steel, double[] percent, double[] spot, int[] nearPeak, int[] farPeak) {
    static Scan of(Strip strip, SeamSteel steel) {
      double[] percent = steel.percents(strip);
      double[] spot = spots(strip, percent);
      int n = percent.length;
      int[] near = new int[n + 1];
      int[] far = new int[n + 1];
      near[0] = -1;
      far[n] = -1;
      for (int i = 0; i < n; i++) {
        near[i + 1] = near[i] < 0 || spot[i] > spot[near[i]] ? i : near[i];
      }
      for (int i = n - 1; i >= 0; i--) {
        far[i] = far[i + 1] < 0 || spot[i] >= spot[far[i + 1]] ? i : far[i + 1];
      }
      return new Scan(steel, percent, spot, near, far);
    }
  }

  /**
   * By cell the mean of the spot that it lies in: of one metal and as wide as a probe resolves, or
   * all of a thinner layer. Below A1 carbide gathers in the one cell at the bound of a steel that
   * holds it better, of no weight and with more carbon than any metal: no metal far from a seam.
   */
  public static double[] spots(Strip strip, double[] percent) {
    double[] mean = new double[percent.length];
    int end;
    for (int from = 0; from < percent.length; from = end) {
      end = layerEnd(strip, from);
      double metres = 0;
      for (int i = from; i < end; i++) {
        metres += strip.metres(i);
      }
      double width = metres / Math.max(1, Math.floor(metres / PROBE_METRES));
      int first = from;
      double x = 0;
      for (int n = 1; first < end; n++) {
        double sum = 0;
        double wide = 0;
        int i = first;
        do {
          sum += strip.metres(i) * percent[i];
          wide += strip.metres(i);
          i++;
        } while (i < end && x + wide + 0.5 * strip.metres(i) < n * width);
        Arrays.fill(mean, first, i, sum / wide);
        x += wide;
        n = Math.max(n, (int) Math.round(x / width));
        first = i;
      }
    }
    return mean;
  }

  private static int layerEnd(Strip strip, int from) {
    int end = from + 1;
    while (end < strip.cells() && strip.metalIndex(end) == strip.metalIndex(from)) {
      end++;
    }
    return end;
  }

  private Scan scan(Plane plane) {
    int index = SeamSteel.index(strip, plane);
    if (scans[index] == null) {
      scans[index] = Scan.of(strip, SeamSteel.of(strip, plane));
    }
    return scans[index];
  }

  /** The most carbon anywhere on the strip, in the seam's steel, wt%. */
  public double corePct(Plane plane) {
    Scan scan = scan(plane);
    return scan.spot[scan.nearPeak[strip.cells()]];
  }

  /** The line at one of its seams. */
  public Line at(Plane plane) {
    Scan scan = scan(plane);
    LineBounds bounds = LineBounds.of(strip, plane);
    int near = scan.nearPeak[plane.face()];
    int far = scan.farPeak[plane.face()];
    double most = most(scan.spot, near, far);
    double seam = Math.min(most, at(scan.percent, plane.face()));
    double width = 0;
    if (most > seam) {
      width =
          side(scan.percent, plane.face() - 1, Math.max(bounds.from(), near), most)
              + side(scan.percent, plane.face(), Math.min(bounds.to() - 1, far), most);
    }
    boolean mirrored = plane.face() == 0 || plane.face() == strip.cells();
    return new Line(
        scan.steel.metal(),
        seam,
        most,
        mirrored ? 2 * width : width,
        Math.max(0, even(scan.percent, bounds) - seam));
  }

  /** The highest carbon that both sides come to: without it on both there is no line between. */
  static double most(double[] percent, int nearPeak, int farPeak) {
    return nearPeak < 0 || farPeak < 0
        ? percent[Math.max(nearPeak, farPeak)]
        : Math.min(percent[nearPeak], percent[farPeak]);
  }

  private double at(double[] percent, int face) {
    if (face == 0 || face == percent.length) {
      return percent[Math.min(face, percent.length - 1)];
    }
    // straight between the middles of the two cells
    double left = strip.metres(face - 1);
    double right = strip.metres(face);
    return (percent[face - 1] * right + percent[face] * left) / (left + right);
  }

  /**
   * Metal on one side of the seam in which more than half of what that side lacks is missing, m.
   * Summed, and not read where the profile first crosses it: carbide left in a single cell at the
   * bound of a layer does not end a line.
   */
  private double side(double[] percent, int from, int end, double far) {
    if (end < 0 || from < 0 || from >= percent.length) {
      return 0;
    }
    int way = end >= from ? 1 : -1;
    double half = 0.5 * (far - percent[from]);
    if (half <= 0) {
      return 0;
    }
    double sum = 0;
    double reach = 0.5 * strip.metres(from);
    double above = half;
    for (int i = from; ; i += way) {
      double next = far - percent[i] - half;
      sum += reach * share(above, next);
      above = next;
      if (i == end) {
        return sum + (above > 0 ? 0.5 * strip.metres(i) : 0);
      }
      reach = 0.5 * (strip.metres(i) + strip.metres(i + way));
    }
  }

  /** Share of a stretch along which what runs straight from one value to another is above zero. */
  private static double share(double first, double second) {
    if (first > 0 && second > 0) {
      return 1;
    }
    return first <= 0 && second <= 0 ? 0 : Math.max(first, second) / Math.abs(first - second);
  }

  /** Mean over the metal half-way to the next seams or, where none follows, to the end. */
  private double even(double[] percent, LineBounds bounds) {
    double near = bounds.nearMetres(strip);
    double far = bounds.farMetres(strip);
    double carbon =
        carbon(percent, bounds.face() - 1, -1, near) + carbon(percent, bounds.face(), 1, far);
    return carbon / (near + far);
  }

  private double carbon(double[] percent, int from, int way, double metres) {
    double sum = 0;
    double left = metres;
    for (int i = from; i >= 0 && i < percent.length && left > 0; i += way) {
      double part = Math.min(left, strip.metres(i));
      sum += part * percent[i];
      left -= part;
    }
    return sum;
  }
}
