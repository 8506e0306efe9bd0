package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.gamma.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.carbon.problem.Steels;
import seamsoak.heat.HeatCurve;

/** Lines and their contrast, read off profiles that are known. */
class LineTest {
  private static final Metal STEEL = Steels.metal("1084");
  private static final double LENGTH = 5e-3;
  private static final int CELLS = 2000;

  /** Half a bell of depth d and scale w: half of it is left at w sqrt(ln 2). */
  @Test
  void bellAtAMirror() {
    double d = 0.4;
    double w = 0.3e-3;
    Line line = atMirror(strip(LENGTH, x -> 0.84 - d * Math.exp(-x * x / (w * w))));
    assertEquals(0.84 - d, line.seamPct(), 1e-4);
    assertEquals(0.84, line.farPct(), 1e-6);
    assertEquals(2 * w * Math.sqrt(Math.log(2)), line.metres(), 1e-6);
    double meanMissing = d * w * Math.sqrt(Math.PI) / 2 / LENGTH;
    assertEquals(d - meanMissing, line.dipPct(), 1e-3);
  }

  @Test
  void squareDip() {
    double h = 0.25e-3;
    Line line = atMirror(strip(LENGTH, x -> x < h ? 0.5 : 0.8));
    assertEquals(0.3, line.depthPct(), 1e-9);
    assertEquals(2 * h, line.metres(), 2 * LENGTH / CELLS);
  }

  /** One cell full of carbide inside a square dip, or at its bound, takes its own width off it. */
  @ParameterizedTest
  @ValueSource(ints = {40, 98})
  void carbideInOneCellDoesNotEndALine(int cell) {
    double h = 0.25e-3;
    double at = (cell + 0.5) * LENGTH / CELLS;
    DoubleUnaryOperator square = x -> x < h ? 0.5 : 0.8;
    DoubleUnaryOperator carbide = x -> Math.abs(x - at) < 1e-9 ? 0.79 : square.applyAsDouble(x);
    Line line = atMirror(strip(LENGTH, carbide));
    assertEquals(2 * h, line.metres(), 4 * LENGTH / CELLS);
  }

  /** The same steel on both sides: the seam inside gives what the mirror gives. */
  @Test
  void seamInside() {
    Strip side = strip(LENGTH, x -> 0.8 - 0.3 * Math.exp(-x / 0.2e-3));
    Line mirror = atMirror(side);
    Strip both = side.weldedTo(side);
    Line inside = Line.of(both, both.planes().get(0));
    assertEquals(mirror.seamPct(), inside.seamPct(), 1e-9);
    assertEquals(mirror.farPct(), inside.farPct(), 1e-9);
    assertEquals(mirror.dipPct(), inside.dipPct(), 1e-9);
    assertEquals(mirror.metres(), inside.metres(), 1e-12);
  }

  /** What lies beyond the next seam widens no line, and does count as far from it. */
  @Test
  void aLineEndsAtTheNextSeam() {
    double h = 0.3e-3;
    Strip thin = strip(h, x -> 0.6);
    Strip thick = strip(LENGTH, x -> x < h ? 0.6 : 0.8);
    Strip whole = thin.withSeam(0, SeamName.LAYERS).weldedTo(thick, SeamName.LAYERS);
    Line line = Line.of(whole, whole.planes().get(0));
    assertEquals(0.8, line.farPct(), 1e-9);
    assertEquals(2 * h, line.metres(), 1e-9);
  }

  @Test
  void noLineWhereCarbonIsEvenOrRaised() {
    Strip raised = strip(LENGTH, x -> 0.8 + 0.1 * Math.exp(-x / 1e-4));
    assertEquals(0, atMirror(raised).depthPct(), 1e-12);
    assertEquals(0, atMirror(raised).metres());
    assertEquals(0, missing(strip(LENGTH, x -> 0.8), 1), 1e-12);
  }

  /** From the poor to the rich there is a step and no line: on one side nothing is missing. */
  @Test
  void aStepIsNoLine() {
    Strip skin = strip(LENGTH, x -> 0.3 + 0.5 * x / LENGTH);
    Strip whole = skin.part(0, CELLS / 2).weldedTo(skin.part(CELLS / 2, CELLS), SeamName.LAYERS);
    Plane plane = whole.planes().get(0);
    assertEquals(0, Line.of(whole, plane).depthPct(), 1e-3);
    assertTrue(new Eye(whole, plane, 1, Eye.BROAD_METRES).on(whole).missingPct() < 0.02);
  }

  /** Two steels evened out at one activity have carbon that differs, and no line. */
  @Test
  void unlikeSteelsInBalanceHaveNoLine() {
    Metal nickel = Steels.metal("75Ni8");
    double activity = STEEL.law().at(1373.15).activity(STEEL.lattice().ratio(0.8));
    double[] metres = new double[50];
    Arrays.fill(metres, 20e-6);
    double[] ratio = new double[50];
    Arrays.fill(ratio, nickel.law().at(1373.15).ratioAt(activity));
    Strip both = strip(LENGTH, x -> 0.8).weldedTo(Strip.of(nickel, metres, ratio));
    Plane plane = both.planes().get(0);
    assertEquals(0, Line.of(both, plane).depthPct(), 1e-9);
    assertEquals(0, new Eye(both, plane, 1, Eye.BROAD_METRES).on(both).missingPct(), 1e-9);
  }

  /** Carbon lost on both sides of unlike steels is a line, told in the steel of the far side. */
  @Test
  void aDipBetweenUnlikeSteelsIsALine() {
    Metal nickel = Steels.metal("75Ni8");
    CarbonLaw.Isotherm steel = STEEL.law().at(1373.15);
    CarbonLaw.Isotherm other = nickel.law().at(1373.15);
    Strip own = strip(LENGTH, x -> 0.8 - 0.2 * Math.exp(-x / 0.3e-3));
    double[] metres = own.thicknesses();
    double[] ratio = new double[metres.length];
    for (int i = 0; i < ratio.length; i++) {
      ratio[i] = other.ratioAt(steel.activity(own.ratio(i)));
    }
    Strip both = Strip.of(nickel, metres, ratio).weldedTo(own);
    Line line = Line.of(both, both.planes().get(0));
    assertEquals(0.2, line.depthPct(), 2e-3);
  }

  /** A Gaussian dip of depth d and width s: d [s/sqrt(s2 + 0.06 mm2) - s/sqrt(s2 + 3 mm2)]. */
  @ParameterizedTest
  @CsvSource({"0.15, 0.2, 1", "0.2, 0.05, 1", "0.1, 1, 1", "0.1, 0.25, 4", "0.3, 3, 1"})
  void contrastOfAGaussianDip(double depth, double millimetres, double trace) {
    double s = millimetres * 1e-3;
    Strip strip = strip(12 * s + 16e-3, x -> 0.8 - depth * Math.exp(-x * x / (2 * s * s)));
    double onFace = s * trace;
    double expected =
        depth * (onFace / Math.hypot(onFace, 0.06e-3) - onFace / Math.hypot(onFace, 3e-3));
    assertEquals(expected, missing(strip, trace), 2e-4);
  }

  /** Where a strip ends hardly matters: a line mirrored near and far has one contrast. */
  @Test
  void contrastDoesNotDependOnWhereTheStripEnds() {
    double[] mirrored = {1.5e-3, 2e-3, 4e-3, 8.5e-3};
    double[] contrast = new double[mirrored.length];
    StripSolver solver = new StripSolver(Steels.FIRE, 1e-4);
    for (int i = 0; i < mirrored.length; i++) {
      // two faces that lay in the fire and were pressed on; the trace of a tile seam
      Strip face = Strip.of(STEEL, 2.2 * mirrored[i], new Grid(2e-3, 1.05, false));
      Strip bare = solver.advance(face, HeatCurve.hold(1423.15, 1500), new Edge(0.5)).strip();
      Strip thin = bare.scaled(1 / 2.2);
      Strip seam = solver.advance(thin, HeatCurve.hold(1393.15, 240), Edge.SEALED).strip();
      contrast[i] = missing(seam, 4.03);
    }
    for (double k : contrast) {
      assertEquals(contrast[3], k, 0.01 * contrast[3], Arrays.toString(contrast));
    }
  }

  /** With constant D, after the same time again a seam has (2/pi) atan(1) of its dip left. */
  @Test
  void closedFormsOfASeamAndOfACrossing() {
    Metal plain = new Metal("D", new ConstantLaw(), STEEL.lattice(), 0.03);
    double d = ConstantLaw.DIFFUSIVITY;
    double seconds = 2000;
    Strip face = Strip.of(plain, 12 * Math.sqrt(d * seconds), new Grid(1e-3, 1.03, false));
    double[] ratio = new double[face.cells()];
    double x = 0;
    for (int i = 0; i < ratio.length; i++) {
      double middle = x + face.metres(i) / 2;
      ratio[i] = 0.03 * Erf.value(middle / (2 * Math.sqrt(d * seconds)));
      x += face.metres(i);
    }
    Strip seam = Strip.of(plain, face.thicknesses(), ratio);
    Strip end =
        new StripSolver(Steels.FIRE, 1e-6)
            .advance(seam, HeatCurve.hold(1373.15, seconds), Edge.SEALED)
            .strip();
    double left = 1 - end.ratio(0) / 0.03;
    assertEquals(2 / Math.PI * Math.atan(1), left, 1e-3);
    Sight seen = Sight.of(new double[] {0.8 * (1 - left), 0.8}, POINT, AROUND);
    assertEquals(0.75 * 0.8, seen.crossing(seen, 0.8, c -> -c), 1e-3);
  }

  private static final double[] POINT = {1, 0};
  private static final double[] AROUND = {0, 1};

  /** Carbon with an activity and a mobility that make D the same everywhere. */
  private record ConstantLaw() implements CarbonLaw {
    static final double DIFFUSIVITY = 1e-10;

    @Override
    public Isotherm at(double kelvin) {
      return new Isotherm() {
        @Override
        public double activity(double y) {
          return y;
        }

        @Override
        public double potential(double y) {
          return DIFFUSIVITY * y;
        }

        @Override
        public double potentialSlope(double y) {
          return DIFFUSIVITY;
        }

        @Override
        public double ratioAt(double activity) {
          return activity;
        }

        @Override
        public double mobility(double y) {
          return DIFFUSIVITY;
        }
      };
    }
  }

  private static Line atMirror(Strip strip) {
    Strip seamed = strip.withSeam(0, SeamName.LAYERS);
    return Line.of(seamed, seamed.planes().get(0));
  }

  /** Carbon that an eye misses at a seam, wt%. */
  private static double missing(Strip strip, double trace) {
    Strip seamed = strip.withSeam(0, SeamName.LAYERS);
    return new Eye(seamed, seamed.planes().get(0), trace, Eye.BROAD_METRES).on(seamed).missingPct();
  }

  private static Strip strip(double length, DoubleUnaryOperator percent) {
    double[] metres = new double[CELLS];
    double[] ratio = new double[CELLS];
    Arrays.fill(metres, length / CELLS);
    for (int i = 0; i < CELLS; i++) {
      ratio[i] = STEEL.lattice().ratio(percent.applyAsDouble((i + 0.5) * length / CELLS));
    }
    return Strip.of(STEEL, metres, ratio);
  }
}
