package seamsoak.carbon;

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
  private final CarbonLaw.At[] laws;
  private final Seam[] seams;
  private final double[] potential;
  private final double[] slope;

  private HeatCurve.Segment segment;
  private double kelvin = Double.NaN;
  private double now;
  private double stepStart;
  private double stepEnd;
  private double eatenAtStart;
  private double eatenAtEnd;

  private final double[] metres;

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
    this.seams = new Seam[n];
    for (int f = 1; f < n; f++) {
      seams[f] = strip.metalIndex(f - 1) == strip.metalIndex(f) ? null : new Seam();
    }
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
    for (int i = 0; i < nearCells; i++) {
      metres[i] = startMetres[i] * left;
    }
  }

  private void setKelvin(double value) {
    if (value == kelvin) {
      return;
    }
    kelvin = value;
    List<Metal> metals = strip.metals();
    for (int m = 0; m < laws.length; m++) {
      laws[m] = metals.get(m).law().at(kelvin);
    }
  }

  private double eaten() {
    return eatenAtStart + (eatenAtEnd - eatenAtStart) * (now - stepStart) / (stepEnd - stepStart);
  }

  @Override
  public double size(int cell) {
    return metres[cell];
  }

  @Override
  public double tolerance(int cell, double y) {
    return relativeTolerance * (0.1 * RATIO_PER_PERCENT + Math.abs(y));
  }

  @Override
  public void fluxes(double[] y, double[] flux, double[] byLeft, double[] byRight) {
    for (int i = 0; i < n; i++) {
      CarbonLaw.At law = law(i);
      potential[i] = law.potential(y[i]);
      slope[i] = law.potentialSlope(y[i]);
    }
    for (int f = 1; f < n; f++) {
      if (seams[f] == null) {
        double r = 2 / (metres[f - 1] + metres[f]);
        flux[f] = r * (potential[f - 1] - potential[f]);
        byLeft[f] = r * slope[f - 1];
        byRight[f] = -r * slope[f];
      } else {
        Seam seam = seams[f];
        seam.solve(side(f - 1, y), side(f, y));
        flux[f] = seam.flux();
        byLeft[f] = seam.byLeft();
        byRight[f] = seam.byRight();
      }
    }
    flux[n] = 0;
    byLeft[n] = 0;
    byRight[n] = 0;
    edgeFlux(y, flux, byLeft, byRight);
    if (eatenAtEnd > eatenAtStart) {
      addRecession(y, flux, byLeft, byRight);
    }
  }

  private CarbonLaw.At law(int cell) {
    return laws[strip.metalIndex(cell)];
  }

  private Seam.Side side(int cell, double[] y) {
    return new Seam.Side(law(cell), y[cell], potential[cell], slope[cell], 2 / metres[cell]);
  }

  private void edgeFlux(double[] y, double[] flux, double[] byLeft, double[] byRight) {
    flux[0] = 0;
    byLeft[0] = 0;
    byRight[0] = 0;
    double outside = edgeActivity();
    if (Double.isNaN(outside) || outside >= law(0).activity(y[0])) {
      return;
    }
    double r = 2 / metres[0];
    flux[0] = r * (law(0).potential(law(0).ratioAt(outside)) - potential[0]);
    byRight[0] = -r * slope[0];
  }

  /** Activity held at the near edge, NaN when sealed. */
  private double edgeActivity() {
    if (edge.share() == 0) {
      return Double.NaN;
    }
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
    double outside = edgeActivity();
    if (Double.isNaN(outside) || outside >= law(0).activity(y[0])) {
      flux[0] -= speed * y[0];
      byRight[0] -= speed;
    } else {
      flux[0] -= speed * law(0).ratioAt(outside);
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
