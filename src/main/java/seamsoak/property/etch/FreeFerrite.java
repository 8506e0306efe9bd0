package seamsoak.property.etch;

import java.util.function.ToDoubleFunction;
import seamsoak.property.phase.PhaseLines;

/**
 * The free ferrite that a cooling leaves in one steel, by the carbon that is there. What does not
 * depend on the layer that it lies in is worked out once.
 */
public final class FreeFerrite {
  /** Carbon that ferrite holds, wt%. */
  static final double IN_FERRITE_PCT = 0.02;

  /** Carbon beyond which pearlite starts no later, wt%. */
  private static final double MOST_FOR_PEARLITE_PCT = 0.8;

  private static final double STEP_PCT = 0.005;

  private final Etching laws;
  private final PhaseLines lines;
  private final Descent descent;
  private final double grainNumber;
  private final double eutectoidPct;

  /** By degree passed, what drives pearlite summed up. */
  private final double[] pearlite;

  FreeFerrite(
      Etching laws, PhaseLines lines, double a1Celsius, Descent descent, double grainNumber) {
    this.laws = laws;
    this.lines = lines;
    this.descent = descent;
    this.grainNumber = grainNumber;
    this.eutectoidPct = lines.alwaysAustenite() ? 0 : lines.eutectoidPct();
    this.pearlite = new double[descent.seconds().length + 1];
    for (int i = 0; i + 1 < pearlite.length; i++) {
      double celsius = Descent.middle(i);
      pearlite[i + 1] =
          pearlite[i] + descent.seconds()[i] * laws.pearlite().drive(a1Celsius - celsius, celsius);
    }
  }

  /** What a grain boundary's ferrite grows to until pearlite starts, by carbon. */
  private final class Growth {
    private final double degree;
    private final double[] lateDrive;
    private final double[] earlyDrive;
    private final double[] beside;

    /** By line of the table, reckoned when first asked for. */
    private final Grown[] known;

    /**
     * @param late of a boundary that started late, squared, m2
     * @param early of one that started early
     */
    private record Grown(double late, double early) {}

    Growth(double degree) {
      this.degree = degree;
      int n = Math.min(descent.seconds().length, 1 + (int) degree);
      lateDrive = new double[n];
      earlyDrive = new double[n];
      beside = new double[n];
      for (int i = 0; i < n; i++) {
        double celsius = Descent.middle(i);
        lateDrive[i] = laws.ferrite().drive(1, celsius);
        earlyDrive[i] = laws.ferrite().earlyDrive(1, celsius);
        beside[i] = laws.besideFerritePct(lines, celsius);
      }
      known = new Grown[1 + (int) Math.ceil(Math.max(STEP_PCT, eutectoidPct) / STEP_PCT)];
    }

    private Grown at(int k) {
      Grown grown = known[k];
      if (grown == null) {
        double carbon = carbon(k);
        double a3 = lines.ferriteBelowCelsius(carbon);
        double needed = laws.ferrite().needed(lines.steel(), carbon, grainNumber);
        double[] speed = speeds(carbon, a3, beside);
        grown =
            new Grown(
                grown(degree, a3, needed, lateDrive, speed),
                grown(degree, a3, needed, earlyDrive, speed));
        known[k] = grown;
      }
      return grown;
    }

    /** Of that much carbon, with ferrite on both sides of all grain boundaries. */
    private double share(ToDoubleFunction<Grown> which, double carbonPct) {
      double line = (carbonPct - carbon(0)) / STEP_PCT;
      if (line > known.length - 1) {
        return 0; // beyond the eutectoid
      }
      int k = (int) Math.max(0, Math.min(known.length - 2, line));
      double part = Math.max(0, line - k);
      return (1 - part) * perVolume(which.applyAsDouble(at(k)))
          + part * perVolume(which.applyAsDouble(at(k + 1)));
    }
  }

  /** Carbon of a line of the tables, none of which is that of ferrite itself, wt%. */
  private static double carbon(int k) {
    return IN_FERRITE_PCT + (k + 1) * STEP_PCT;
  }

  /** By degree, D times the square of what drives growth, m2/s: parabolic, planar. */
  private double[] speeds(double carbonPct, double a3, double[] beside) {
    double[] speed = new double[beside.length];
    for (int i = firstBelow(a3); i < speed.length; i++) {
      double over = beside[i] - carbonPct;
      if (over > 0) {
        double between = 0.5 * (beside[i] + carbonPct);
        speed[i] =
            laws.diffusivity(between, Descent.middle(i))
                * over
                * over
                / ((beside[i] - IN_FERRITE_PCT) * (carbonPct - IN_FERRITE_PCT));
      }
    }
    return speed;
  }

  /** Nothing grows above A3. */
  private static int firstBelow(double a3) {
    return (int) Math.max(0, Descent.HIGHEST - 1 - a3);
  }

  private double grown(double degree, double a3, double needed, double[] drive, double[] speed) {
    double sum = 0;
    double before = 0;
    double grown = 0;
    for (int i = firstBelow(a3); i < speed.length; i++) {
      double seconds = descent.seconds()[i];
      double below = Math.max(0, a3 - Descent.middle(i));
      double more = seconds * below * below * below * drive[i];
      // of the degree in which it starts, what is left of it
      double part = sum >= needed ? 1 : Math.max(0, 1 - (needed - sum) / Math.max(more, 1e-300));
      sum += more;
      before = grown;
      grown += part * seconds * speed[i];
    }
    return before + (degree - (speed.length - 1)) * (grown - before);
  }

  /** Where pearlite starts with that much carbon, C; the lowest there is where it does not. */
  public double pearliteCelsius(double carbonPct) {
    return Descent.HIGHEST - pearliteDegree(carbonPct);
  }

  private double pearliteDegree(double carbonPct) {
    double needed = laws.pearlite().needed(lines.steel(), carbonPct, grainNumber);
    int low = 0;
    int high = pearlite.length - 1;
    if (pearlite[high] <= needed) {
      return high;
    }
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (pearlite[middle] <= needed) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low + (needed - pearlite[low]) / (pearlite[high] - pearlite[low]);
  }

  /** Shares by carbon in a layer. */
  public interface Shares {
    /** The share of ferrite where there is that much carbon, 0 to 1. */
    Band at(double carbonPct);
  }

  /**
   * The shares of ferrite in and beside a layer.
   *
   * @param layerCarbonPct carbon of the layer far from any seam
   */
  public Shares beside(double layerCarbonPct) {
    if (lines.alwaysAustenite()) {
      return c -> Band.of(0);
    }
    double enriched = Math.max(eutectoidPct, layerCarbonPct);
    double degree = pearliteDegree(Math.min(MOST_FOR_PEARLITE_PCT, enriched));
    double most = laws.besideCementitePct(lines, Descent.HIGHEST - degree);
    Growth growth = new Growth(degree);
    return c -> {
      double left = left(c);
      double room = share(eutectoidPct, c);
      return new Band(
          Math.max(left, Math.min(room, growth.share(Growth.Grown::late, c))),
          Math.max(left, share(most, c)),
          Math.max(left, Math.min(room, growth.share(Growth.Grown::early, c))));
    };
  }

  /** Undissolved in the heat that it came from. */
  private double left(double carbonPct) {
    return descent.fromCelsius() >= lines.a1Celsius()
        ? share(lines.austeniteBesideFerritePct(descent.fromCelsius()), carbonPct)
        : 0;
  }

  /** The lever: ferrite beside austenite of that carbon. */
  static double share(double austenitePct, double carbonPct) {
    return carbonPct >= austenitePct
        ? 0
        : Math.min(1, (austenitePct - carbonPct) / (austenitePct - IN_FERRITE_PCT));
  }

  private double perVolume(double square) {
    return 4 / laws.grainNumber().interceptMetres(grainNumber) * Math.sqrt(square);
  }
}
