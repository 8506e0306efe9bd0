package seamsoak.single;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Shop;
import seamsoak.carbon.Edge;
import seamsoak.carbon.EvenCarbon;
import seamsoak.carbon.Grid;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.heat.HeatCurve;
import seamsoak.state.Evening;
import seamsoak.state.Spots;
import seamsoak.steel.Steel;
import seamsoak.unit.Temperature;

/**
 * Carbon across the seam of a stack that repeats two layers, held at one temperature from the
 * start.
 *
 * @param temperatureC of the hold
 * @param minutes of the hold
 * @param massErrorRelative carbon not accounted for, relative
 * @param minutesToEven90 until the mean carbon of the layers is within a tenth of its starting
 *     distance from even; empty when already even or beyond the time computed
 * @param first the first steel
 * @param second the second steel
 * @param profile from the middle of the first layer to the middle of the second, 0 at the seam
 */
public record Migration(
    double temperatureC,
    double minutes,
    double massErrorRelative,
    Optional<Double> minutesToEven90,
    Layer first,
    Layer second,
    List<Point> profile) {

  /**
   * A layer after the hold, all its carbon counted, carbide and what is dissolved.
   *
   * @param steel its name
   * @param thicknessMm of the whole layer
   * @param startCarbonPct before
   * @param meanCarbonPct mean over the layer
   * @param seamCarbonPct at the seam
   * @param midCarbonPct in the middle of the layer
   * @param evenCarbonPct what it would have if carbon were evened out
   * @param dissolved what of it is in solution, for austenitic stainless steel
   */
  public record Layer(
      String steel,
      double thicknessMm,
      double startCarbonPct,
      double meanCarbonPct,
      double seamCarbonPct,
      double midCarbonPct,
      double evenCarbonPct,
      Optional<Dissolved> dissolved) {}

  /**
   * Carbon in solution beside chromium carbide; the rest is in that.
   *
   * @param mostPct that can be at that heat
   * @param meanPct mean over the layer
   * @param seamPct at the seam
   * @param midPct in the middle of the layer
   */
  public record Dissolved(double mostPct, double meanPct, double seamPct, double midPct) {
    private static Dissolved of(double most, double meanPct, double seamPct, double midPct) {
      return new Dissolved(most, meanPct, Math.min(most, seamPct), Math.min(most, midPct));
    }
  }

  /** A point of the profile. */
  public record Point(double positionMm, String steel, double carbonPct, double activity) {}

  private static final double FINEST = 4e-4;
  private static final double GROWTH = 1.08;

  /** A thin stack is told in at least so many spots. */
  private static final double LEAST_SPOTS = 100;

  /** Computes it. */
  public static Migration of(
      Shop shop,
      Steel first,
      Steel second,
      double firstMetres,
      double secondMetres,
      double kelvin,
      double seconds) {
    Metal a = shop.metal(first);
    Metal b = shop.metal(second);
    Grid grid = new Grid(FINEST, GROWTH, false);
    Strip start = Strip.of(a, firstMetres / 2, grid).weldedTo(Strip.of(b, secondMetres / 2, grid));
    EvenCarbon even = new EvenCarbon(start, kelvin);
    int seam = start.seam();
    StripSolver.Advanced end =
        shop.solver().advance(start, HeatCurve.hold(kelvin, seconds), Edge.SEALED);
    Strip after = end.strip();
    double activity = shop.solver().seamActivity(after, kelvin);
    return new Migration(
        kelvin - Temperature.ZERO_CELSIUS,
        seconds / 60,
        end.massErrorRelative(),
        new Evening(shop).minutes(start, start, even, kelvin),
        layer(after, start, even, 0, seam, seam - 1, 0, activity, kelvin),
        layer(after, start, even, seam, after.cells(), seam, after.cells() - 1, activity, kelvin),
        profile(after, activity, kelvin));
  }

  private static Layer layer(
      Strip after,
      Strip start,
      EvenCarbon even,
      int from,
      int to,
      int atSeam,
      int atMiddle,
      double activity,
      double kelvin) {
    Metal metal = after.metal(atSeam);
    double seamPct = metal.percent(metal.law().at(kelvin).ratioAt(activity));
    double midPct = after.percent(atMiddle);
    return new Layer(
        metal.name(),
        2e3 * after.metres(from, to),
        start.percent(atSeam),
        metal.percent(Evening.mean(after, from, to)),
        seamPct,
        midPct,
        even.percent(atSeam),
        metal.mostDissolvedPct(kelvin).stream()
            .mapToObj(m -> Dissolved.of(m, meanUpTo(m, after, from, to), seamPct, midPct))
            .findFirst());
  }

  /** Mean over cells of what each has, but no more than that. */
  private static double meanUpTo(double mostPct, Strip s, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += s.metres(i) * Math.min(mostPct, s.percent(i));
    }
    return sum / s.metres(from, to);
  }

  private static List<Point> profile(Strip s, double seamActivity, double kelvin) {
    int seam = s.seam();
    double spot = Math.min(Spots.PROBE_METRES, s.metres() / LEAST_SPOTS);
    List<Point> points = new ArrayList<>();
    for (Spots.Spot p : Spots.side(s, seam - 1, -1, spot)) {
      points.add(0, point(p, -1, kelvin));
    }
    points.add(atSeam(s.metal(seam - 1), seamActivity, kelvin));
    points.add(atSeam(s.metal(seam), seamActivity, kelvin));
    for (Spots.Spot p : Spots.side(s, seam, 1, spot)) {
      points.add(point(p, 1, kelvin));
    }
    return List.copyOf(points);
  }

  private static Point atSeam(Metal metal, double activity, double kelvin) {
    return new Point(
        0, metal.name(), metal.percent(metal.law().at(kelvin).ratioAt(activity)), activity);
  }

  private static Point point(Spots.Spot p, int side, double kelvin) {
    return new Point(
        side * p.metres() * 1e3,
        p.metal().name(),
        p.percent(),
        p.metal().law().at(kelvin).activity(p.ratio()));
  }
}
