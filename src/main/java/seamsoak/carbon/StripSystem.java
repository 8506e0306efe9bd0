package seamsoak.carbon;

import java.util.Arrays;
import java.util.List;
import seamsoak.heat.HeatCurve;
import seamsoak.numeric.ConservativeSystem;

/**
 * A strip in the fire as a chain of cells: carbon flows by activity, and at an open edge scale eats
 * the near layer, whose cells shrink together so that each keeps to its share of what is left.
 */
final class StripSystem implements ConservativeSystem {
  /** wt% carbon to carbon per iron atom, near enough for a tolerance. */
  private static final double RATIO_PER_PERCENT = 0.047;

  private final Strip strip;
  private final Edge edge;
  private final Surroundings surroundings;
  private final double relativeTolerance;
  private final int n;
  private final int nearCells;
  private final double[] startMetres;
  private final double[] shareAbove;
  private final double nearMetres;
  private final int[] layerFrom;
  private CarbonLaw.At[] laws;
  private CarbonLaw.At[] otherLaws;
  private final Seam[] seams;
  private final double[] potential;
  private final double[] slope;

  private HeatCurve.Segment segment;
  private double kelvin = Double.NaN;
  private double otherKelvin = Double.NaN;
  private double edgeKelvin = Double.NaN;

  /** Carbon that the edge would hold in its metal, and the potential there; NaN when sealed. */
  private double edgeRatio = Double.NaN;

  private double edgePotential;
  private double now;
  private double stepStart;
  private double stepEnd;
  private double eatenAtStart;
  private double eatenAtEnd;

  private final double[] metres;

  /** Share of the near layer that the cells' thickness was last set for. */
  private double nearLeft = 1;

  StripSystem(Strip strip, Edge edge, Surroundings surroundings, double relativeTolerance) {
    this.strip = strip;
    this.edge = edge;
    this.surroundings = surroundings;
    this.relativeTolerance = relativeTolerance;
    this.n = strip.cells();
    this.nearCells = strip.nearLayerCells();
    this.startMetres = strip.thicknesses();
    this.metres = startMetres.clone();
    double near = 0;
    for (int i = 0; i < nearCells; i++) {
      near += startMetres[i];
    }
    this.nearMetres = near;
    this.shareAbove = new double[nearCells + 1];
    for (int i = 0; i < nearCells; i++) {
      shareAbove[i + 1] = shareAbove[i] + startMetres[i] / near;
    }
    this.laws = new CarbonLaw.At[strip.metals().size()];
    this.otherLaws = new CarbonLaw.At[laws.length];
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

  /** The segment in force; times are counted from its start. */
  void enter(HeatCurve.Segment next) {
    segment = next;
    setKelvin(next.fromKelvin());
  }

  /** Metal eaten from the near edge since the system was made, at the ends of the next step, m. */
  void eat(double atStart, double atEnd) {
    eatenAtStart = atStart;
    eatenAtEnd = atEnd;
  }

  /** Cells as thick as they are at the time set. */
  double[] thicknesses() {
    return metres.clone();
  }

  double nearMetres() {
    return nearMetres;
  }

  @Override
  public int cells() {
    return n;
  }

  @Override
  public void beginStep(double startSeconds, double endSeconds) {
    stepStart = startSeconds;
    stepEnd = endSeconds;
  }

  @Override
  public void moveTo(double seconds) {
    now = seconds;
    setKelvin(segment.kelvinAt(seconds));
    double left = (nearMetres - eaten()) / nearMetres;
    if (left != nearLeft) {
      nearLeft = left;
      for (int i = 0; i < nearCells; i++) {
        metres[i] = startMetres[i] * left;
      }
    }
  }

  /** Steps go back and forth between two temperatures: the laws of both are kept. */
  private void setKelvin(double value) {
    if (value == kelvin) {
      return;
    }
    CarbonLaw.At[] swap = laws;
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

  private double eaten() {
    return eatenAtStart + (eatenAtEnd - eatenAtStart) * (now - stepStart) / (stepEnd - stepStart);
  }

  @Override
  public void sizes(double[] into) {
    System.arraycopy(metres, 0, into, 0, n);
  }

  @Override
  public double tolerance(int cell, double y) {
    return relativeTolerance * (0.1 * RATIO_PER_PERCENT + Math.abs(y));
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
    flux[n] = 0;
    byLeft[n] = 0;
    byRight[n] = 0;
    flux[0] = 0;
    byLeft[0] = 0;
    byRight[0] = 0;
    settleEdge();
    if (y[0] > edgeRatio) {
      double r = 2 / metres[0];
      flux[0] = r * (edgePotential - potential[0]);
      byRight[0] = -r * slope[0];
    }
    if (eatenAtEnd > eatenAtStart) {
      addRecession(y, flux, byLeft, byRight);
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

  private CarbonLaw.At law(int cell) {
    return laws[strip.metalIndex(cell)];
  }

  private Seam.Side side(int cell, double[] y) {
    return new Seam.Side(law(cell), y[cell], potential[cell], slope[cell], 2 / metres[cell]);
  }

  private void settleEdge() {
    if (edge.share() > 0 && kelvin != edgeKelvin) {
      edgeKelvin = kelvin;
      double outside = edgeActivity();
      // as much as the metal can have, whatever lies in it as carbide: nothing leaves it then
      boolean full = outside >= law(0).mostActivity();
      edgeRatio = full ? Double.POSITIVE_INFINITY : law(0).ratioAt(outside);
      edgePotential = full ? Double.NaN : law(0).potential(edgeRatio);
    }
  }

  /** Activity held at the near edge where it is not sealed. */
  private double edgeActivity() {
    double own = law(0).activity(strip.metal(0).startRatio());
    double scaled = surroundings.activity().applyAsDouble(kelvin);
    return scaled + (1 - edge.share()) * Math.max(0, own - scaled);
  }

  /**
   * The cells' faces move into the metal; what they pass over changes cells, at the edge it is
   * lost.
   */
  private void addRecession(double[] y, double[] flux, double[] byLeft, double[] byRight) {
    double speed = (eatenAtEnd - eatenAtStart) / (stepEnd - stepStart);
    if (y[0] > edgeRatio) {
      flux[0] -= speed * edgeRatio;
    } else {
      flux[0] -= speed * y[0];
      byRight[0] -= speed;
    }
    for (int f = 1; f < nearCells; f++) {
      double w = speed * (1 - shareAbove[f]);
      double toRight = metres[f - 1] / (metres[f - 1] + metres[f]);
      flux[f] -= w * ((1 - toRight) * y[f - 1] + toRight * y[f]);
      byLeft[f] -= w * (1 - toRight);
      byRight[f] -= w * toRight;
    }
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

  /** Activity at a face between unlike metals, as the last flux evaluation left it. */
  double interfaceActivity(int face) {
    return seams[face].activity();
  }
}
