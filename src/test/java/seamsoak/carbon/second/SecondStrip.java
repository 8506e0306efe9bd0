package seamsoak.carbon.second;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import seamsoak.carbon.Surroundings;
import seamsoak.heat.HeatCurve;

/**
 * The strip problem as a chain of ordinary differential equations, written without a look at the
 * engine's: many cells, close together at both ends of each layer by a cosine; in the near layer a
 * coordinate from 0 at the face to 1 at its far end, in which the metal drifts inward as scale eats
 * (the drift by differences at points, not by fluxes); time by its square root, in which both scale
 * and the first moments of diffusion go smoothly; what is lost is an unknown of its own (the first
 * of the chain); interface activities by halving.
 */
final class SecondStrip implements Chain {
  /** Share of the cosine in the spacing; the rest is even. */
  private static final double GATHERED = 0.9;

  private static final int HALVINGS = 60;

  /** A layer with its carbon by place, wt% against metres from the layer's near end. */
  record Layer(SecondSteel steel, double metres, int cells, DoubleUnaryOperator percent) {
    Layer(SecondSteel steel, double metres, int cells) {
      this(steel, metres, cells, x -> steel.startPct());
    }
  }

  private final List<Layer> layers;
  private final int[] layerOf;

  /** Faces within the layer, as share of its thickness; cell i lies from near[i] to far[i]. */
  private final double[] near;

  private final double[] far;
  private final double share;
  private final Surroundings fire;
  private HeatCurve.Segment segment;
  private double segmentStart;
  private double squareAtStart;
  private double kelvin = Double.NaN;
  private SecondSteel.Isotherm[] laws;

  SecondStrip(List<Layer> layers, double share, Surroundings fire) {
    this.layers = List.copyOf(layers);
    this.share = share;
    this.fire = fire;
    int n = layers.stream().mapToInt(Layer::cells).sum();
    layerOf = new int[n];
    near = new double[n];
    far = new double[n];
    int i = 0;
    for (int l = 0; l < layers.size(); l++) {
      int cells = layers.get(l).cells();
      for (int k = 0; k < cells; k++, i++) {
        layerOf[i] = l;
        near[i] = place((double) k / cells);
        far[i] = place((k + 1.0) / cells);
      }
    }
  }

  private static double place(double s) {
    return (1 - GATHERED) * s + GATHERED * 0.5 * (1 - Math.cos(Math.PI * s));
  }

  /** What came out of it; carbon is metres times atoms per metal atom. */
  record Answer(
      SecondProfile profile,
      double carbonLost,
      double carbonMissing,
      double metalLost,
      int steps) {}

  /** Carries the strip through a curve. */
  Answer through(HeatCurve curve, double tolerance) {
    double[] y = new double[size()];
    double before = 0;
    for (int i = 0; i < layerOf.length; i++) {
      y[i + 1] = start(i);
      before += y[i + 1] * metres(i);
    }
    Rodas4 rodas = new Rodas4(this);
    double t = 0;
    for (HeatCurve.Segment next : curve.segments()) {
      squareAtStart = segment == null ? 0 : eatenSquare(t);
      segment = next;
      segmentStart = t;
      rodas.run(y, Math.sqrt(t), Math.sqrt(t + next.seconds()), tolerance);
      t += next.seconds();
    }
    double eaten = Math.sqrt(eatenSquare(t));
    double after = 0;
    List<SecondProfile.Cell> cells = new ArrayList<>();
    for (int i = 0; i < layerOf.length; i++) {
      double thick = thickness(layerOf[i], eaten) * (far[i] - near[i]);
      after += y[i + 1] * thick;
      cells.add(new SecondProfile.Cell(layerOf[i], thick, y[i + 1]));
    }
    return new Answer(new SecondProfile(cells), y[0], before - after - y[0], eaten, rodas.steps());
  }

  private double start(int cell) {
    Layer layer = layers.get(layerOf[cell]);
    int parts = 20;
    double sum = 0;
    for (int k = 0; k < parts; k++) {
      double at = near[cell] + (k + 0.5) / parts * (far[cell] - near[cell]);
      sum += layer.steel().ratio(layer.percent().applyAsDouble(at * layer.metres()));
    }
    return sum / parts;
  }

  private double metres(int cell) {
    return layers.get(layerOf[cell]).metres() * (far[cell] - near[cell]);
  }

  private double thickness(int layer, double eaten) {
    return layers.get(layer).metres() - (layer == 0 ? eaten : 0);
  }

  private double kelvinAt(double seconds) {
    return segment.kelvinAt(Math.max(0, seconds - segmentStart));
  }

  private double scaling(double seconds) {
    return share * fire.scaling().applyAsDouble(kelvinAt(seconds));
  }

  /** Square of the metal eaten, by Simpson's rule over the segment so far. */
  private double eatenSquare(double seconds) {
    double span = seconds - segmentStart;
    if (share == 0 || span <= 0) {
      return squareAtStart;
    }
    int parts = segment.fromKelvin() == segment.toKelvin() ? 1 : 40;
    double h = span / parts;
    double sum = 0;
    for (int i = 0; i < parts; i++) {
      double a = segmentStart + i * h;
      sum += scaling(a) + 4 * scaling(a + h / 2) + scaling(a + h);
    }
    return squareAtStart + 2 * sum * h / 6;
  }

  @Override
  public int size() {
    return layerOf.length + 1;
  }

  @Override
  public double small(int i) {
    return i == 0 ? 1e-6 : 1e-2;
  }

  /** Rates by the square root of time. */
  @Override
  public void rates(double root, double[] y, double[] rate) {
    double seconds = root * root;
    setKelvin(kelvinAt(seconds));
    double eaten = Math.sqrt(eatenSquare(seconds));
    double drift =
        share == 0
            ? 0
            : eaten == 0 ? Math.sqrt(2 * scaling(seconds)) : 2 * root * scaling(seconds) / eaten;
    int n = layerOf.length;
    double surface = surfaceRatio(y[1]);
    double in = surface == y[1] ? 0 : laws[0].drive(surface, y[1]) / halfCell(0, eaten);
    rate[0] = -2 * root * in + drift * surface;
    for (int i = 0; i < n; i++) {
      double out = i == n - 1 ? 0 : flux(i, y, eaten);
      int l = layerOf[i];
      rate[i + 1] = 2 * root * (in - out) / (2 * halfCell(i, eaten));
      if (l == 0 && drift > 0) {
        rate[i + 1] += drift * (1 - middle(i)) / thickness(0, eaten) * slope(i, y, surface);
      }
      in = out;
    }
  }

  private void setKelvin(double value) {
    if (value != kelvin) {
      kelvin = value;
      laws = layers.stream().map(l -> l.steel().at(kelvin)).toArray(SecondSteel.Isotherm[]::new);
    }
  }

  private double middle(int cell) {
    return 0.5 * (near[cell] + far[cell]);
  }

  private double halfCell(int cell, double eaten) {
    return 0.5 * thickness(layerOf[cell], eaten) * (far[cell] - near[cell]);
  }

  /** Carbon of the metal at the face; the cell's own where nothing leaves it. */
  private double surfaceRatio(double first) {
    if (share == 0) {
      return first;
    }
    SecondSteel steel = layers.get(0).steel();
    double scale = fire.activity().applyAsDouble(kelvin);
    double own = laws[0].activity(steel.ratio(steel.startPct()));
    double held = scale + (1 - share) * Math.max(0, own - scale);
    return held < laws[0].activity(first) ? laws[0].ratioAt(held) : first;
  }

  private double flux(int i, double[] y, double eaten) {
    SecondSteel.Isotherm left = laws[layerOf[i]];
    SecondSteel.Isotherm right = laws[layerOf[i + 1]];
    double before = halfCell(i, eaten);
    double after = halfCell(i + 1, eaten);
    if (left == right) {
      return left.drive(y[i + 1], y[i + 2]) / (before + after);
    }
    double low = Math.min(left.activity(y[i + 1]), right.activity(y[i + 2]));
    double high = Math.max(left.activity(y[i + 1]), right.activity(y[i + 2]));
    high = Math.min(high, Math.min(left.mostActivity(), right.mostActivity()));
    double fromLeft = left.drive(y[i + 1], left.ratioAt(high)) / before;
    double fromRight = right.drive(y[i + 2], right.ratioAt(high)) / after;
    if (fromLeft + fromRight > 0) {
      // more comes than the metal that holds less can take on: the rest stays there as carbide
      return left.mostActivity() < right.mostActivity() ? -fromRight : fromLeft;
    }
    for (int k = 0; k < HALVINGS; k++) {
      double a = 0.5 * (low + high);
      fromLeft = left.drive(y[i + 1], left.ratioAt(a)) / before;
      fromRight = right.drive(y[i + 2], right.ratioAt(a)) / after;
      if (fromLeft + fromRight > 0) {
        low = a;
      } else {
        high = a;
      }
    }
    return 0.5 * (fromLeft - fromRight);
  }

  /** Slope of carbon by the near layer's coordinate, from three points where there are three. */
  private double slope(int i, double[] y, double surface) {
    double here = middle(i);
    double back = i == 0 ? here : here - middle(i - 1);
    double left = (y[i + 1] - (i == 0 ? surface : y[i])) / back;
    if (i == layerOf.length - 1 || layerOf[i + 1] != 0) {
      return left;
    }
    double on = middle(i + 1) - here;
    double right = (y[i + 2] - y[i + 1]) / on;
    return (left * on + right * back) / (back + on);
  }
}
