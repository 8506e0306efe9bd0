package seamsoak.heat;

import seamsoak.numeric.ConservativeSystem;

/**
 * Heat on its way between the middle and the face of a body, in cells of one thickness. The area it
 * crosses goes as the distance from the middle to a power: 0 is a plate, 1 a round bar, 2 a ball.
 *
 * <p>Conserved is heat per volume; flux runs on the integral of the conductivity over temperature,
 * so heat taken up at one temperature needs no special case. The first face is the middle, which
 * nothing crosses; at the last one the temperature is found at which the half cell carries what the
 * surroundings give.
 */
public final class Conduction implements ConservativeSystem {
  private static final int MOST_NEWTON = 60;
  private static final double CLOSE_KELVIN = 1e-9;

  private final HeatLaw law;
  private final FaceLaw face;
  private final double cell;
  private final double[] area;
  private final double[] volume;
  private final double toleranceKelvin;
  private double seconds;

  /**
   * A body at rest.
   *
   * @param cells number of cells, at least 2
   * @param halfMetres from the middle to the face
   * @param power of the area
   * @param toleranceKelvin error of one step that may be made
   */
  public Conduction(
      HeatLaw law,
      FaceLaw face,
      int cells,
      double halfMetres,
      double power,
      double toleranceKelvin) {
    this.law = law;
    this.face = face;
    this.cell = halfMetres / cells;
    this.toleranceKelvin = toleranceKelvin;
    this.area = new double[cells + 1];
    this.volume = new double[cells];
    for (int f = 0; f <= cells; f++) {
      area[f] = Math.pow((double) f / cells, power);
    }
    for (int i = 0; i < cells; i++) {
      volume[i] =
          halfMetres
              * (Math.pow((i + 1.0) / cells, power + 1) - Math.pow((double) i / cells, power + 1))
              / (power + 1);
    }
    if (power > 0) {
      area[0] = 0;
    }
  }

  @Override
  public int cells() {
    return volume.length;
  }

  @Override
  public void beginStep(double startSeconds, double endSeconds) {}

  @Override
  public void moveTo(double seconds) {
    this.seconds = seconds;
  }

  @Override
  public void sizes(double[] into) {
    System.arraycopy(volume, 0, into, 0, volume.length);
  }

  @Override
  public double largest(double[] change, double[] y) {
    double most = 0;
    for (int i = 0; i < change.length; i++) {
      double tolerance = toleranceKelvin * law.capacity(law.kelvin(y[i]));
      most = Math.max(most, Math.abs(change[i]) / tolerance);
    }
    return most;
  }

  @Override
  public void fluxes(double[] y, double[] flux, double[] byLeft, double[] byRight) {
    int n = volume.length;
    flux[0] = 0;
    byLeft[0] = 0;
    byRight[0] = 0;
    double before = law.kelvin(y[0]);
    for (int f = 1; f < n; f++) {
      double here = law.kelvin(y[f]);
      double through = area[f] / cell;
      flux[f] = through * (law.potential(before) - law.potential(here));
      byLeft[f] = through * law.conductivity(before) / law.capacity(before);
      byRight[f] = -through * law.conductivity(here) / law.capacity(here);
      before = here;
    }
    double at = faceKelvin(seconds, y[n - 1]);
    double half = 2 / cell;
    double slope = face.slope(seconds, at);
    flux[n] = -area[n] * face.into(seconds, at);
    byLeft[n] =
        -area[n]
            * slope
            * half
            * law.conductivity(before)
            / (half * law.conductivity(at) - slope)
            / law.capacity(before);
    byRight[n] = 0;
  }

  /** Temperature of the face, from the heat of the last cell. */
  public double faceKelvin(double seconds, double lastHeat) {
    double inside = law.kelvin(lastHeat);
    double potential = law.potential(inside);
    double half = 2 / cell;
    double at = inside;
    for (int k = 0; k < MOST_NEWTON; k++) {
      double left = half * (law.potential(at) - potential) - face.into(seconds, at);
      double step = left / (half * law.conductivity(at) - face.slope(seconds, at));
      at = Math.max(at / 2, at - step);
      if (Math.abs(step) < CLOSE_KELVIN) {
        break;
      }
    }
    return at;
  }

  /** Temperature of the middle, from the heat of the first two cells. */
  public double middleKelvin(double[] y) {
    double first = law.kelvin(y[0]);
    return first + (first - law.kelvin(y[1])) / 8;
  }
}
