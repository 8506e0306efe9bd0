package seamsoak.carbon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A strip of metal from a plane of interest (its near edge, index 0) to the next plane of symmetry.
 * Cells have a thickness, a metal and carbon per metal atom. Immutable.
 *
 * <p>Where two different faces were joined, the plane of interest lies inside, at {@link #seam()}.
 */
public final class Strip {
  /** What rounding leaves of a layer ground off: thinner than an atom is none. */
  private static final double ATOM_METRES = 1e-10;

  private final List<Metal> metals;
  private final int[] metal;
  private final double[] metres;
  private final double[] ratio;
  private final int seam;
  private final double scaledMetres;

  Strip(
      List<Metal> metals,
      int[] metal,
      double[] metres,
      double[] ratio,
      int seam,
      double scaledMetres) {
    this.metals = metals;
    this.metal = metal;
    this.metres = metres;
    this.ratio = ratio;
    this.seam = seam;
    this.scaledMetres = scaledMetres;
  }

  /** One metal with the carbon it came with, on a grid. */
  public static Strip of(Metal metal, double metres, Grid grid) {
    double[] cells = grid.cells(metres);
    double[] ratio = new double[cells.length];
    Arrays.fill(ratio, metal.startRatio());
    return new Strip(List.of(metal), new int[cells.length], cells, ratio, 0, 0);
  }

  /** One metal with given cells. */
  public static Strip of(Metal metal, double[] metres, double[] ratio) {
    return new Strip(List.of(metal), new int[metres.length], metres.clone(), ratio.clone(), 0, 0);
  }

  public int cells() {
    return metres.length;
  }

  public Metal metal(int cell) {
    return metals.get(metal[cell]);
  }

  List<Metal> metals() {
    return metals;
  }

  int metalIndex(int cell) {
    return metal[cell];
  }

  /** Thickness of a cell, m. */
  public double metres(int cell) {
    return metres[cell];
  }

  /** Carbon per metal atom in a cell. */
  public double ratio(int cell) {
    return ratio[cell];
  }

  double[] ratios() {
    return ratio.clone();
  }

  double[] thicknesses() {
    return metres.clone();
  }

  /** Carbon of a cell, wt%. */
  public double percent(int cell) {
    return metal(cell).percent(ratio[cell]);
  }

  /** The face, counted from the near edge, at which the plane of interest lies. */
  public int seam() {
    return seam;
  }

  /** Metal that the scale now on the near edge has eaten, m. */
  public double scaledMetres() {
    return scaledMetres;
  }

  /** Thickness of the whole strip, m. */
  public double metres() {
    return Sums.of(metres);
  }

  /** All carbon in it, metres times atoms per metal atom. */
  public double carbon() {
    double[] part = new double[metres.length];
    for (int i = 0; i < part.length; i++) {
      part[i] = metres[i] * ratio[i];
    }
    return Sums.of(part);
  }

  /** The same strip drawn thinner or thicker; carbon per cell is unchanged. */
  public Strip scaled(double factor) {
    double[] thin = metres.clone();
    for (int i = 0; i < thin.length; i++) {
      thin[i] *= factor;
    }
    return new Strip(metals, metal, thin, ratio, seam, scaledMetres);
  }

  /** The same strip with its scale knocked off, so that new scale starts from nothing. */
  public Strip descaled() {
    return new Strip(metals, metal, metres, ratio, seam, 0);
  }

  Strip with(double[] newMetres, double[] newRatio, double newScaledMetres) {
    return new Strip(metals, metal, newMetres, newRatio, seam, newScaledMetres);
  }

  /** The same layers in two cells each, with the carbon they have. */
  public Strip coarse() {
    Strip all = null;
    for (int from = 0; from < cells(); ) {
      int to = from + 1;
      while (to < cells() && metal[to] == metal[from]) {
        to++;
      }
      Strip layer = part(from, to);
      double half = layer.metres() / 2;
      double mean = layer.carbon() / layer.metres();
      Strip two = of(metal(from), new double[] {half, half}, new double[] {mean, mean});
      all = all == null ? two : all.followedBy(two);
      from = to;
    }
    return all.with(all.metres, all.ratio, scaledMetres);
  }

  /** This strip turned end for end. */
  public Strip reversed() {
    int n = cells();
    int[] m = new int[n];
    double[] t = new double[n];
    double[] r = new double[n];
    for (int i = 0; i < n; i++) {
      m[i] = metal[n - 1 - i];
      t[i] = metres[n - 1 - i];
      r[i] = ratio[n - 1 - i];
    }
    return new Strip(metals, m, t, r, n - seam, 0);
  }

  /** This strip followed by another, end to end; the plane of interest is where this one has it. */
  public Strip followedBy(Strip next) {
    List<Metal> all = new ArrayList<>(metals);
    int[] place = new int[next.metals.size()];
    for (int k = 0; k < place.length; k++) {
      Metal m = next.metals.get(k);
      int at = all.indexOf(m);
      if (at < 0) {
        at = all.size();
        all.add(m);
      }
      place[k] = at;
    }
    int n = cells();
    int[] m = Arrays.copyOf(metal, n + next.cells());
    double[] t = Arrays.copyOf(metres, n + next.cells());
    double[] r = Arrays.copyOf(ratio, n + next.cells());
    for (int i = 0; i < next.cells(); i++) {
      m[n + i] = place[next.metal[i]];
      t[n + i] = next.metres[i];
      r[n + i] = next.ratio[i];
    }
    return new Strip(List.copyOf(all), m, t, r, seam, scaledMetres);
  }

  /**
   * Two faces forge-welded: the near edge of this one against the near edge of the other. The plane
   * of interest is the weld.
   */
  public Strip weldedTo(Strip other) {
    Strip back = reversed();
    Strip joined = back.followedBy(other);
    return new Strip(joined.metals, joined.metal, joined.metres, joined.ratio, cells(), 0);
  }

  /** A layer laid on the near edge, its own near edge outward. */
  public Strip under(Strip layer) {
    Strip joined = layer.followedBy(this);
    return new Strip(joined.metals, joined.metal, joined.metres, joined.ratio, 0, 0);
  }

  /** The cells from one to another, exclusive, with their first as near edge. */
  Strip part(int from, int to) {
    return new Strip(
        metals,
        Arrays.copyOfRange(metal, from, to),
        Arrays.copyOfRange(metres, from, to),
        Arrays.copyOfRange(ratio, from, to),
        0,
        0);
  }

  /** Cells from the near edge on that are of the near edge's metal. */
  int nearLayerCells() {
    int i = 1;
    while (i < metal.length && metal[i] == metal[0]) {
      i++;
    }
    return i;
  }

  /**
   * What is left when a depth is ground off the near edge.
   *
   * @throws IllegalArgumentException when the strip is not thicker than that
   */
  public Strip ground(double depthMetres) {
    double left = depthMetres;
    int i = 0;
    while (i < metres.length && left >= metres[i] - ATOM_METRES) {
      left -= metres[i];
      i++;
    }
    if (i == metres.length) {
      throw new IllegalArgumentException("the strip is not that thick");
    }
    Strip rest = part(i, cells());
    rest.metres[0] -= Math.max(0, left);
    return rest;
  }
}
