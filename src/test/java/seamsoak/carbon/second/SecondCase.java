package seamsoak.carbon.second;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.Surroundings;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.steel.Composition;
import seamsoak.support.Analyses;

/**
 * One strip given to both: layers from the near edge on, a curve, how open the edge is, the fire.
 */
record SecondCase(
    String name, List<Part> parts, HeatCurve curve, double share, Surroundings fire, int cells) {

  private static final double SPOT = 1e-5;

  /**
   * A layer as both get it.
   *
   * @param steel a name of the list, or an analysis
   * @param dip carbon missing by depth below the layer's near end, as share of its own
   */
  record Part(String steel, double metres, DoubleUnaryOperator dip) {
    Part(String steel, double metres) {
      this(steel, metres, x -> 0);
    }

    Composition analysis() {
      return steel.startsWith("C0.") ? Analyses.of(steel) : Analyses.named(steel);
    }

    Strip strip(Grid grid) {
      Metal metal = Metal.of(Analyses.CORRELATIONS, steel, analysis(), 1);
      double[] cells = grid.cells(metres);
      double[] ratio = new double[cells.length];
      double x = 0;
      int parts = 20;
      for (int i = 0; i < cells.length; i++) {
        for (int k = 0; k < parts; k++) {
          double lacking = dip.applyAsDouble(x + (k + 0.5) / parts * cells[i]);
          ratio[i] += metal.lattice().ratio(analysis().carbon() * (1 - lacking)) / parts;
        }
        x += cells[i];
      }
      return Strip.of(metal, cells, ratio);
    }
  }

  static SecondCase sealed(String name, HeatCurve curve, int cells, Part... parts) {
    return new SecondCase(name, List.of(parts), curve, 0, Steels.FIRE, cells);
  }

  static SecondCase bare(String name, HeatCurve curve, double share, int cells, Part... parts) {
    return new SecondCase(name, List.of(parts), curve, share, Steels.FIRE, cells);
  }

  /** The engine's answer on layers gridded at both ends. */
  StripSolver.Advanced engine(double finest, double growth, double tolerance) {
    Strip all = null;
    for (Part p : parts) {
      Strip next = p.strip(new Grid(finest, growth, true));
      all = all == null ? next : all.followedBy(next);
    }
    return new StripSolver(fire, tolerance).advance(all, curve, new Edge(share));
  }

  /** The second answer. */
  SecondStrip.Answer second(double tolerance) {
    List<SecondStrip.Layer> layers = new ArrayList<>();
    for (Part p : parts) {
      double carbon = p.analysis().carbon();
      layers.add(
          new SecondStrip.Layer(
              new SecondSteel(p.analysis()),
              p.metres(),
              cells,
              x -> carbon * (1 - p.dip().applyAsDouble(x))));
    }
    return new SecondStrip(layers, share, fire).through(curve, tolerance);
  }

  /**
   * How far the two lie apart.
   *
   * @param mostPct largest difference of a mean over a spot, wt%
   * @param summedPct largest difference of the carbon summed from the face down to any depth,
   *     spread over the depth in which carbon has moved, wt%; counts what scale and fire took too
   */
  record Apart(double mostPct, double summedPct) {}

  /**
   * Compares means over spots of about 0.01 mm, counted from each layer's near end: where carbide
   * is left at a seam its amount is given, its thickness is that of whatever cell it lies in.
   */
  Apart apart(StripSolver.Advanced engine, SecondStrip.Answer second) {
    SecondProfile one = profile(engine.strip());
    SecondProfile two = second.profile();
    double touched = touched(engine.strip());
    double most = 0;
    double summed = Math.abs(engine.carbonLost() - second.carbonLost());
    double from = 0;
    for (int l = 0; l < parts.size(); l++) {
      SecondSteel steel = new SecondSteel(parts.get(l).analysis());
      double metres = parts.get(l).metres() - (l == 0 ? engine.metalLost() : 0);
      int spots = (int) Math.max(1, Math.round(metres / SPOT));
      for (int k = 0; k < spots; k++) {
        double a = from + k * metres / spots;
        double b = from + (k + 1) * metres / spots;
        double first = (one.carbonTo(b) - one.carbonTo(a)) / (b - a);
        double other = (two.carbonTo(b) - two.carbonTo(a)) / (b - a);
        most = Math.max(most, Math.abs(steel.percent(first) - steel.percent(other)));
        summed = Math.max(summed, Math.abs(one.carbonTo(b) - two.carbonTo(b)));
      }
      from += metres;
    }
    SecondSteel steel = new SecondSteel(parts.get(0).analysis());
    return new Apart(most, steel.percent(summed / touched));
  }

  /** Carbon for which the second answer does not account, spread over that depth, wt%. */
  double missingPct(StripSolver.Advanced engine, SecondStrip.Answer second) {
    SecondSteel steel = new SecondSteel(parts.get(0).analysis());
    return steel.percent(Math.abs(second.carbonMissing()) / touched(engine.strip()));
  }

  private static SecondProfile profile(Strip strip) {
    List<SecondProfile.Cell> cells = new ArrayList<>();
    int layer = 0;
    for (int i = 0; i < strip.cells(); i++) {
      layer += i > 0 && strip.metal(i) != strip.metal(i - 1) ? 1 : 0;
      cells.add(new SecondProfile.Cell(layer, strip.metres(i), strip.ratio(i)));
    }
    return new SecondProfile(cells);
  }

  /** Depth in which carbon has moved by more than a thousandth, m. */
  private static double touched(Strip strip) {
    double sum = 0;
    for (int i = 0; i < strip.cells(); i++) {
      double start = strip.metal(i).startRatio();
      sum += Math.abs(strip.ratio(i) - start) > 1e-3 * start ? strip.metres(i) : 0;
    }
    return sum;
  }
}
