package seamsoak.carbon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Lays a new grid over zones of a strip without losing carbon: a monotone cubic through the carbon
 * summed up to each old face, differenced at the new faces (F.N. Fritsch, R.E. Carlson, SIAM J.
 * Numer. Anal. 17 (1980) 238).
 */
public final class Regrid {
  private Regrid() {}

  /** How a zone is cut into cells. */
  public interface Cells {
    /**
     * Thicknesses, near end first and fine there, m.
     *
     * @param metres of the zone
     * @param farFine whether it is to be fine at its far end too
     */
    double[] of(double metres, boolean farFine);
  }

  /**
   * The strip with its first zone cut anew, fine at the near edge.
   *
   * @param farFace whether the far edge is a face and not a plane of symmetry
   */
  public static Strip nearZone(Strip strip, Cells cells, boolean farFace) {
    return cut(strip, cells, zone -> zone == 0, farFace);
  }

  /** The strip with all its zones cut anew, fine at seams, other metals and faces. */
  public static Strip allZones(Strip strip, Cells cells, boolean farFace) {
    return cut(strip, cells, zone -> true, farFace);
  }

  private static Strip cut(Strip strip, Cells cells, IntPredicate which, boolean farFace) {
    int[] ends = Zones.of(strip);
    int[] fresh = new int[ends.length];
    List<double[]> metres = new ArrayList<>();
    List<double[]> ratio = new ArrayList<>();
    for (int z = 0; z + 1 < ends.length; z++) {
      Strip old = strip.part(ends[z], ends[z + 1]);
      double[] m = old.thicknesses();
      double[] r = old.ratios();
      if (which.test(z)) {
        boolean farFine = ends[z + 1] < strip.cells() || farFace || strip.hasSeamAt(strip.cells());
        m = cells.of(old.metres(), farFine);
        r = ratios(old, m);
      }
      metres.add(m);
      ratio.add(r);
      fresh[z + 1] = fresh[z] + m.length;
    }
    int[] metal = new int[fresh[fresh.length - 1]];
    for (int z = 0; z + 1 < ends.length; z++) {
      Arrays.fill(metal, fresh[z], fresh[z + 1], strip.metalIndex(ends[z]));
    }
    List<Plane> planes =
        strip.planes().stream().map(p -> p.at(fresh[Arrays.binarySearch(ends, p.face())])).toList();
    return new Strip(
        strip.metals(),
        metal,
        metres.stream().flatMapToDouble(Arrays::stream).toArray(),
        ratio.stream().flatMapToDouble(Arrays::stream).toArray(),
        planes,
        strip.scaledMetres(),
        strip.farScaledMetres());
  }

  /** Carbon per metal atom in new cells over a zone. */
  private static double[] ratios(Strip zone, double[] cells) {
    int old = zone.cells();
    double[] x = new double[old + 1];
    double[] sum = new double[old + 1];
    for (int i = 0; i < old; i++) {
      x[i + 1] = x[i] + zone.metres(i);
      sum[i + 1] = sum[i] + zone.metres(i) * zone.ratio(i);
    }
    double[] slope = slopes(x, sum, zone);
    double[] ratio = new double[cells.length];
    double at = 0;
    double before = 0;
    int k = 0;
    for (int i = 0; i < cells.length; i++) {
      at = i == cells.length - 1 ? x[old] : at + cells[i];
      while (k < old - 1 && x[k + 1] < at) {
        k++;
      }
      double here = i == cells.length - 1 ? sum[old] : hermite(x, sum, slope, k, at);
      ratio[i] = (here - before) / cells[i];
      before = here;
    }
    return ratio;
  }

  /** Slopes at the faces, limited so that the cubic never turns back. */
  private static double[] slopes(double[] x, double[] sum, Strip zone) {
    int n = zone.cells();
    double[] m = new double[n + 1];
    m[0] = n == 1 ? zone.ratio(0) : edge(zone, 0, 1);
    m[n] = n == 1 ? zone.ratio(0) : edge(zone, n - 1, n - 2);
    for (int i = 1; i < n; i++) {
      double hl = x[i] - x[i - 1];
      double hr = x[i + 1] - x[i];
      m[i] = (zone.ratio(i - 1) * hr + zone.ratio(i) * hl) / (hl + hr);
    }
    for (int i = 0; i < n; i++) {
      double most = 3 * zone.ratio(i);
      m[i] = Math.max(0, Math.min(m[i], most));
      m[i + 1] = Math.max(0, Math.min(m[i + 1], most));
    }
    return m;
  }

  private static double edge(Strip zone, int end, int next) {
    double gap = 0.5 * (zone.metres(end) + zone.metres(next));
    return zone.ratio(end) + (zone.ratio(end) - zone.ratio(next)) * 0.5 * zone.metres(end) / gap;
  }

  private static double hermite(double[] x, double[] sum, double[] m, int k, double at) {
    double h = x[k + 1] - x[k];
    double t = (at - x[k]) / h;
    double t2 = t * t;
    double t3 = t2 * t;
    return sum[k] * (2 * t3 - 3 * t2 + 1)
        + h * m[k] * (t3 - 2 * t2 + t)
        + sum[k + 1] * (3 * t2 - 2 * t3)
        + h * m[k + 1] * (t3 - t2);
  }
}
