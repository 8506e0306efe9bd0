package seamsoak.carbon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * A straight line through metal from its near edge (index 0) to its far one: cells with a
 * thickness, a metal and carbon per metal atom, and the seams on it. Immutable.
 */
public final class Strip {
  /** What rounding leaves of a layer ground off: thinner than an atom is none. */
  private static final double ATOM_METRES = 1e-10;

  private final List<Metal> metals;
  private final int[] metal;
  private final double[] metres;
  private final double[] ratio;
  private final List<Plane> planes;
  private final double nearScaled;
  private final double farScaled;

  Strip(
      List<Metal> metals,
      int[] metal,
      double[] metres,
      double[] ratio,
      List<Plane> planes,
      double nearScaled,
      double farScaled) {
    this.metals = metals;
    this.metal = metal;
    this.metres = metres;
    this.ratio = ratio;
    this.planes = planes;
    this.nearScaled = nearScaled;
    this.farScaled = farScaled;
  }

  /** One metal with the carbon it came with, on a grid. */
  public static Strip of(Metal metal, double metres, Grid grid) {
    double[] cells = grid.cells(metres);
    double[] ratio = new double[cells.length];
    Arrays.fill(ratio, metal.startRatio());
    return of(metal, cells, ratio);
  }

  /** One metal with given cells. */
  public static Strip of(Metal metal, double[] metres, double[] ratio) {
    int[] all = new int[metres.length];
    return new Strip(List.of(metal), all, metres.clone(), ratio.clone(), List.of(), 0, 0);
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

  /** The seams on it, from the near edge on. */
  public List<Plane> planes() {
    return planes;
  }

  /** The face, counted from the near edge, of the first seam on it; 0 where there is none. */
  public int seam() {
    return planes.isEmpty() ? 0 : planes.get(0).face();
  }

  /** Metal that the scale now on the near edge has eaten, m. */
  public double scaledMetres() {
    return nearScaled;
  }

  /** Metal that the scale now on the far edge has eaten, m. */
  public double farScaledMetres() {
    return farScaled;
  }

  /** Thickness of the whole strip, m. */
  public double metres() {
    return Sums.of(metres);
  }

  /** Thickness of the cells from one to another, exclusive, m. */
  public double metres(int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += metres[i];
    }
    return sum;
  }

  /** Whether a seam lies at a face. */
  public boolean hasSeamAt(int face) {
    return planes.stream().anyMatch(p -> p.face() == face);
  }

  /** The cell half-way from edge to edge. */
  public int middleCell() {
    double half = metres() / 2;
    int cell = 0;
    for (double x = metres[0]; x < half; x += metres[cell]) {
      cell++;
    }
    return cell;
  }

  /** All carbon in it, metres times atoms per metal atom. */
  public double carbon() {
    return Sums.of(IntStream.range(0, cells()).mapToDouble(i -> metres[i] * ratio[i]).toArray());
  }

  /** The same strip drawn thinner or thicker; carbon per cell is unchanged. */
  public Strip scaled(double factor) {
    double[] thin = Arrays.stream(metres).map(m -> m * factor).toArray();
    List<Plane> moved = mapped(planes, p -> p.withSpread(p.spreadSquareMetres() * factor * factor));
    return new Strip(metals, metal, thin, ratio, moved, nearScaled, farScaled);
  }

  /** The same strip with every cell's carbon multiplied by a factor. */
  public Strip enriched(double factor) {
    double[] all = Arrays.stream(ratio).map(r -> r * factor).toArray();
    return with(metres, all, nearScaled, farScaled);
  }

  /** The same strip, its seams having been in a fire that spread carbon by a further D t. */
  public Strip spread(double squareMetres) {
    List<Plane> all = mapped(planes, p -> p.withSpread(p.spreadSquareMetres() + squareMetres));
    return new Strip(metals, metal, metres, ratio, all, nearScaled, farScaled);
  }

  /** Its scale knocked off. */
  public Strip descaled() {
    return with(metres, ratio, 0, 0);
  }

  Strip with(double[] newMetres, double[] newRatio, double newNearScaled, double newFarScaled) {
    return new Strip(metals, metal, newMetres, newRatio, planes, newNearScaled, newFarScaled);
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
    List<Plane> back = new ArrayList<>(planes.size());
    for (int k = planes.size() - 1; k >= 0; k--) {
      back.add(planes.get(k).at(n - planes.get(k).face()));
    }
    return new Strip(metals, m, t, r, List.copyOf(back), farScaled, nearScaled);
  }

  /**
   * This strip followed by another, end to end. A seam that ends one and begins the other is one.
   */
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
    List<Plane> both = new ArrayList<>(planes);
    boolean endsInSeam = !planes.isEmpty() && planes.get(planes.size() - 1).face() == n;
    for (Plane p : next.planes) {
      if (p.face() > 0 || !endsInSeam) {
        both.add(p.at(n + p.face()));
      }
    }
    return new Strip(List.copyOf(all), m, t, r, List.copyOf(both), nearScaled, next.farScaled);
  }

  /** This strip welded to the one that follows it. */
  public Strip weldedTo(Strip next, SeamName name) {
    return withSeam(cells(), name).followedBy(next);
  }

  /** Two faces forge-welded: the near edge of this one against the near edge of the other. */
  public Strip weldedTo(Strip other) {
    return reversed().weldedTo(other, SeamName.LAYERS);
  }

  /** The same strip with a new seam at a face; one that lies there already stays. */
  public Strip withSeam(int face, SeamName name) {
    if (hasSeamAt(face)) {
      return this;
    }
    List<Plane> all = new ArrayList<>(planes);
    all.add(new Plane(face, name, 0));
    all.sort(Comparator.comparingInt(Plane::face));
    return new Strip(metals, metal, metres, ratio, List.copyOf(all), nearScaled, farScaled);
  }

  /** The whole of which this strip is the half up to a plane of symmetry at its far edge. */
  public Strip mirrored() {
    return followedBy(reversed());
  }

  /** The cells from one to another, exclusive, with their first as near edge. */
  public Strip part(int from, int to) {
    List<Plane> inside = new ArrayList<>();
    for (Plane p : planes) {
      boolean first = from == 0 && p.face() == 0;
      boolean last = to == cells() && p.face() == to;
      if (first || last || (p.face() > from && p.face() < to)) {
        inside.add(p.at(p.face() - from));
      }
    }
    return new Strip(
        metals,
        Arrays.copyOfRange(metal, from, to),
        Arrays.copyOfRange(metres, from, to),
        Arrays.copyOfRange(ratio, from, to),
        List.copyOf(inside),
        from == 0 ? nearScaled : 0,
        to == cells() ? farScaled : 0);
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
    return rest.with(rest.metres, rest.ratio, 0, rest.farScaled);
  }

  private static List<Plane> mapped(List<Plane> planes, UnaryOperator<Plane> by) {
    return planes.isEmpty() ? planes : planes.stream().map(by).toList();
  }
}
