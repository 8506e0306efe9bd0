package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;
import seamsoak.support.Depths;

/** What must hold for any strip; the seed is the test's argument and stands in its name. */
class InvariantsTest {
  private static final double TOLERANCE = 1e-4;

  /** Of carbon that nothing has changed, wt%. */
  private static final double ROUNDING = 1e-15;

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void mirrorImage(long seed) {
    Case c = new Case(seed);
    Strip there = advanced(c.strip, c.kelvin, c.seconds, Edge.SEALED);
    Strip back = advanced(c.strip.reversed(), c.kelvin, c.seconds, Edge.SEALED).reversed();
    assertSame(there, back, 1e-7);
  }

  /** Lengths by s, time by s squared: the same carbon, metal lost by s. */
  @ParameterizedTest
  @MethodSource("seeds")
  void similarity(long seed) {
    Case c = new Case(seed);
    double s = c.random.nextDouble(1.5, 5);
    for (Edge edge : List.of(Edge.SEALED, Edge.OPEN)) {
      Strip small = advanced(c.strip, c.kelvin, c.seconds, edge);
      Strip large = advanced(c.strip.scaled(s), c.kelvin, c.seconds * s * s, edge);
      assertSame(small, large.scaled(1 / s), 1e-7);
      assertEquals(small.metres(), large.metres() / s, 1e-12);
    }
  }

  /** A layer in two halves of the same steel under two names behaves as one. */
  @ParameterizedTest
  @MethodSource("seeds")
  void aSplitLayer(long seed) {
    Case c = new Case(seed);
    Metal one = c.pick();
    Metal two = new Metal("other", one.law(), one.lattice(), one.startRatio());
    Grid grid = new Grid(0.01, 1.15, true);
    Strip half = Strip.of(one, 0.4e-3, grid);
    Strip whole = half.followedBy(half.followedBy(c.strip));
    Strip split = Strip.of(two, 0.4e-3, grid).followedBy(half.followedBy(c.strip));
    assertSame(
        advanced(whole, c.kelvin, c.seconds, Edge.SEALED),
        advanced(split, c.kelvin, c.seconds, Edge.SEALED),
        1e-7);
  }

  /** At one temperature no activity rises above the highest or falls below the lowest. */
  @ParameterizedTest
  @MethodSource("seeds")
  void activityStaysWithinItsExtremes(long seed) {
    Case c = new Case(seed);
    double[] before = extremes(c.strip, c.kelvin);
    double[] after = extremes(advanced(c.strip, c.kelvin, c.seconds, Edge.SEALED), c.kelvin);
    double slack = 10 * TOLERANCE * before[1];
    assertTrue(
        after[0] >= before[0] - slack && after[1] <= before[1] + slack,
        () -> c + " from " + Arrays.toString(before) + " to " + Arrays.toString(after));
    assertTrue(after[1] - after[0] <= before[1] - before[0] + slack);
  }

  /**
   * In the end all is one activity, the one that {@link EvenCarbon} finds from the balance alone.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void evensOut(long seed) {
    Case c = new Case(seed);
    double longEnough = Math.pow(c.strip.metres(), 2) / 1e-11;
    Strip end = advanced(c.strip, c.kelvin, longEnough, Edge.SEALED);
    EvenCarbon even = new EvenCarbon(c.strip, c.kelvin);
    double held = 0;
    for (int i = 0; i < end.cells(); i++) {
      held += even.ratio(i) * end.metres(i);
    }
    // one that is full keeps what comes on top as carbide beside the seam, where it met it
    boolean allHeld = held > (1 - 1e-6) * c.strip.carbon();
    for (int i = 0; i < end.cells(); i++) {
      double slack = 1e-3 * even.ratio(i);
      String where = c + " in " + end.metal(i).name();
      assertTrue(end.ratio(i) >= even.ratio(i) - slack, where);
      assertTrue(!allHeld || end.ratio(i) <= even.ratio(i) + slack, where);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aNewGridKeepsCarbonAndProfile(long seed) {
    Case c = new Case(seed);
    Strip skin = advanced(c.strip, c.kelvin, 600, Edge.OPEN);
    double finest = c.random.nextDouble(0.003, 0.02);
    Strip anew = Regrid.nearZone(skin, (m, f) -> new Grid(finest, 1.1, true).cells(m), false);
    assertEquals(skin.carbon(), anew.carbon(), 1e-14 * skin.carbon());
    assertEquals(skin.metres(), anew.metres(), 1e-15);
    assertEquals(skin.scaledMetres(), anew.scaledMetres());
    double near = skin.part(0, Zones.of(skin)[1]).metres();
    double range = extremePercent(skin, 1) - extremePercent(skin, -1);
    for (double x = 0.02; x < 0.98; x += 0.03) {
      assertEquals(
          Depths.percentAt(skin, x * near),
          Depths.percentAt(anew, x * near),
          0.02 * range + ROUNDING);
    }
  }

  /** A longer hold of one steel, sealed, never makes a dip deeper. */
  @ParameterizedTest
  @MethodSource("seeds")
  void holdingLongerNeverDeepensADip(long seed) {
    Case c = new Case(seed);
    Strip bare = Strip.of(c.pick(), 3e-3, new Grid(1e-3, 1.1, false));
    Strip strip = advanced(bare, c.kelvin, 300, Edge.OPEN);
    double last = line(strip).dipPct();
    for (int i = 0; i < 8; i++) {
      strip = advanced(strip, c.kelvin, 120 << i, Edge.SEALED);
      double dip = line(strip).dipPct();
      assertTrue(dip <= last + 1e-12, "from " + last + " to " + dip);
      last = dip;
    }
  }

  /** The same dip is gone sooner, the hotter it is held. */
  @ParameterizedTest
  @MethodSource("seeds")
  void hotterNeverNeedsLonger(long seed) {
    Case c = new Case(seed);
    Strip bare = Strip.of(c.pick(), 3e-3, new Grid(1e-3, 1.1, false));
    Strip strip = advanced(bare, 1423, 300, Edge.OPEN);
    double shallow = Math.max(ROUNDING, 0.4 * line(strip).dipPct());
    double last = Double.POSITIVE_INFINITY;
    for (double kelvin = 1223; kelvin <= 1473; kelvin += 50) {
      double seconds = secondsUntil(strip, kelvin, shallow);
      double before = last;
      assertTrue(seconds <= before * 1.001, () -> "from " + before + " to " + seconds);
      last = seconds;
    }
  }

  private static double secondsUntil(Strip strip, double kelvin, double dipPct) {
    double[] reached = {Double.POSITIVE_INFINITY};
    new StripSolver(Steels.FIRE, TOLERANCE)
        .advance(
            strip,
            HeatCurve.hold(kelvin, 1e6),
            Edge.SEALED,
            (t, s) -> {
              if (line(s).dipPct() > dipPct) {
                return true;
              }
              reached[0] = t;
              return false;
            });
    return reached[0];
  }

  /** At a seam with the mirror image of the strip. */
  private static Line line(Strip strip) {
    Strip seamed = strip.withSeam(0, SeamName.LAYERS);
    return Line.of(seamed, seamed.planes().get(0));
  }

  private static Strip advanced(Strip strip, double kelvin, double seconds, Edge edge) {
    return new StripSolver(Steels.FIRE, TOLERANCE)
        .advance(strip, HeatCurve.hold(kelvin, seconds), edge)
        .strip();
  }

  private static void assertSame(Strip a, Strip b, double tolerance) {
    assertEquals(a.cells(), b.cells());
    for (int i = 0; i < a.cells(); i++) {
      assertEquals(a.ratio(i), b.ratio(i), tolerance * a.ratio(i), "cell " + i);
    }
  }

  private static double[] extremes(Strip strip, double kelvin) {
    double low = Double.POSITIVE_INFINITY;
    double high = 0;
    for (int i = 0; i < strip.cells(); i++) {
      double a = strip.metal(i).law().at(kelvin).activity(strip.ratio(i));
      low = Math.min(low, a);
      high = Math.max(high, a);
    }
    return new double[] {low, high};
  }

  private static double extremePercent(Strip strip, int sign) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < strip.cells(); i++) {
      most = Math.max(most, sign * strip.percent(i));
    }
    return sign * most;
  }

  /** One to three layers of any steels at a heat. */
  private static final class Case {
    private static final List<Metal> STEELS = Steels.all();
    private final SplittableRandom random;
    private final double kelvin;
    private final double seconds;
    private final Strip strip;

    Case(long seed) {
      random = new SplittableRandom(seed);
      kelvin = random.nextDouble(1223, 1473);
      seconds = random.nextDouble(60, 3600);
      Strip built = layer();
      for (int more = random.nextInt(3); more > 0; more--) {
        built = layer().followedBy(built);
      }
      strip = built;
    }

    @Override
    public String toString() {
      return String.join(", ", strip.metals().stream().map(Metal::name).toList())
          + " at "
          + (kelvin - 273.15)
          + " C for "
          + seconds
          + " s";
    }

    Metal pick() {
      return STEELS.get(random.nextInt(STEELS.size()));
    }

    private Strip layer() {
      Grid grid = new Grid(random.nextDouble(0.002, 0.02), random.nextDouble(1.05, 1.2), true);
      return Strip.of(pick(), random.nextDouble(0.8e-3, 3e-3), grid);
    }
  }
}
