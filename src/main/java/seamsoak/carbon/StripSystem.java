package seamsoak.carbon;

import java.util.Arrays;
import java.util.List;
import seamsoak.heat.HeatCurve;
import seamsoak.numeric.ConservativeSystem;

/**
 * A strip in the fire as a chain of cells: carbon flows by activity, and at an open edge scale eats
 * the zone next to it, whose cells shrink together so that each keeps to its share of what is left.
 */
final class StripSystem implements ConservativeSystem {
  /** wt% carbon to carbon per iron atom, near enough for a tolerance. */
  private static final double RATIO_PER_PERCENT = 0.047;

  private final Strip strip;
  private final OuterFace near;
  private final OuterFace far;
  private final double relativeTolerance;
  private final int n;
  private final Recession recession;
  private final int[] layerFrom;
  private CarbonLaw.Isotherm[] laws;
  private CarbonLaw.Isotherm[] otherLaws;
  private final Seam[] seams;
  private final double[] potential;
  private final double[] slope;

  private HeatCurve.Segment segment;
  private double kelvin = Double.NaN;
  private double otherKelvin = Double.NaN;
  private final double[] metres;

  StripSystem(
      Strip strip, Edge near, Edge far, Surroundings surroundings, double relativeTolerance) {
    this.strip = strip;
    this.n = strip.cells();
    this.near = new OuterFace(near, strip.metal(0), surroundings);
    this.far = new OuterFace(far, strip.metal(n - 1), surroundings);
    this.relativeTolerance = relativeTolerance;
    this.metres = strip.thicknesses();
    this.recession = new Recession(strip);
    this.laws = new CarbonLaw.Isotherm[strip.metals().size()];
    this.otherLaws = new CarbonLaw.Isotherm[laws.length];
    this.seams = new Seam[n];
    int[] starts = new int[n + 1];
    int layers = 1;
    for (int f = 1; f < n; f++) {
      if (strip.metalIndex(f - 1) != strip.metalIndex(f)) {
        seams[f] = new Seam();
        starts[layers++] = f;
      }
    }
    starts[layers] = n;
    this.layerFrom = Arrays.copyOf(starts, layers + 1);
    this.potential = new double[n];
    this.slope = new double[n];
  }

  /**
   * The segment in force; times are counted from its start.
   *
   * @return whether it begins as hot as the last one ended
   */
  boolean enter(HeatCurve.Segment next) {
    double was = kelvin;
    segment = next;
    setKelvin(next.fromKelvin());
    return kelvin == was;
  }

  /** What scale eats of this strip. */
  Recession recession() {
    return recession;
  }

  /** Cells as thick as they are at the time set. */
  double[] thicknesses() {
    return metres.clone();
  }

  @Override
  public int cells() {
    return n;
  }

  @Override
  public void beginStep(double startSeconds, double endSeconds) {
    recession.beginStep(startSeconds, endSeconds);
  }

  @Override
  public void moveTo(double seconds) {
    setKelvin(segment.kelvinAt(seconds));
    recession.moveTo(seconds, metres);
  }

  /** Steps go back and forth between two temperatures: the laws of both are kept. */
  private void setKelvin(double value) {
    if (value == kelvin) {
      return;
    }
    CarbonLaw.Isotherm[] swap = laws;
    laws = otherLaws;
    otherLaws = swap;
    double was = kelvin;
    kelvin = value;
    if (value != otherKelvin) {
      List<Metal> metals = strip.metals();
      for (int m = 0; m < laws.length; m++) {
        laws[m] = metals.get(m).law().at(value);
      }
    }
    otherKelvin = was;
  }

  @Override
  public void sizes(double[] into) {
    System.arraycopy(metres, 0, into, 0, n);
  }

  @Override
  public double largest(double[] change, double[] y) {
    double most = 0;
    for (int i = 0; i < n; i++) {
      double here = Math.abs(change[i]);
      double scale = 0.1 * RATIO_PER_PERCENT + Math.abs(y[i]);
      // no division where it is not larger, as in most cells
      if (!(here <= most * scale)) {
        if (Double.isNaN(here)) {
          return here;
        }
        most = here / scale;
      }
    }
    return most / relativeTolerance;
  }

  @Override
  public void fluxes(double[] y, double[] flux, double[] byLeft, double[] byRight) {
    for (int layer = 0; layer + 1 < layerFrom.length; layer++) {
      int from = layerFrom[layer];
      int to = layerFrom[layer + 1];
      law(from).potentials(y, from, to, potential, slope);
      if (from > 0) {
        Seam seam = seams[from];
        seam.solve(side(from - 1, y), side(from, y));
        flux[from] = seam.flux();
        byLeft[from] = seam.byLeft();
        byRight[from] = seam.byRight();
      }
      for (int f = from + 1; f < to; f++) {
        double r = 2 / (metres[f - 1] + metres[f]);
        flux[f] = r * (potential[f - 1] - potential[f]);
        byLeft[f] = r * slope[f - 1];
        byRight[f] = -r * slope[f];
      }
    }
    atEdges(y, flux, byLeft, byRight);
    recession.startAnew();
    recession.addTo(metres, y, near, far, flux, byLeft, byRight);
  }

  @Override
  public void carryOn(double[] y, double[] flux, double[] byLeft, double[] byRight) {
    near.settle(law(0), kelvin);
    far.settle(law(n - 1), kelvin);
    recession.addTo(metres, y, near, far, flux, byLeft, byRight);
  }

  /** What the fire takes through the outer faces. */
  private void atEdges(double[] y, double[] flux, double[] byLeft, double[] byRight) {
    flux[0] = 0;
    byLeft[0] = 0;
    byRight[0] = 0;
    near.settle(law(0), kelvin);
    if (near.takesFrom(y[0])) {
      double r = 2 / metres[0];
      flux[0] = r * (near.potential() - potential[0]);
      byRight[0] = -r * slope[0];
    }
    int end = n - 1;
    flux[n] = 0;
    byLeft[n] = 0;
    byRight[n] = 0;
    far.settle(law(end), kelvin);
    if (far.takesFrom(y[end])) {
      double r = 2 / metres[end];
      flux[n] = r * (potential[end] - far.potential());
      byLeft[n] = r * slope[end];
    }
  }

  @Override
  public boolean stopAtBends(double[] from, double[] to) {
    boolean any = false;
    for (int layer = 0; layer + 1 < layerFrom.length; layer++) {
      any |= law(layerFrom[layer]).stopAtBends(from, to, layerFrom[layer], layerFrom[layer + 1]);
    }
    return any;
  }

  private CarbonLaw.Isotherm law(int cell) {
    return laws[strip.metalIndex(cell)];
  }

  private Seam.Side side(int cell, double[] y) {
    return new Seam.Side(law(cell), y[cell], potential[cell], slope[cell], 2 / metres[cell]);
  }

  /** Diffusivity at the fastest cell for the temperature set, m2/s. */
  double fastest(double[] y) {
    double most = 0;
    for (int i = 0; i < n; i++) {
      most = Math.max(most, law(i).potentialSlope(y[i]));
    }
    return most;
  }

  double thinnest() {
    double least = Double.POSITIVE_INFINITY;
    for (double m : metres) {
      least = Math.min(least, m);
    }
    return least;
  }

  /** Activity at a face between unlike metals at a temperature. */
  double interfaceActivity(int face, double atKelvin) {
    enter(new HeatCurve.Segment(atKelvin, atKelvin, 1));
    fluxes(strip.ratios(), new double[n + 1], new double[n + 1], new double[n + 1]);
    return seams[face].activity();
  }
}
