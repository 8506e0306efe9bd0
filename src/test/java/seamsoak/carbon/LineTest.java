package seamsoak.carbon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.carbon.problem.Steels;

/** Width and dip of lines read off profiles that are known. */
class LineTest {
  private static final Metal STEEL = Steels.metal("1084");
  private static final double LENGTH = 5e-3;
  private static final int CELLS = 2000;

  /** Half a bell of depth d and scale w: half of it is left at w sqrt(ln 2). */
  @Test
  void bellAtAMirror() {
    double d = 0.4;
    double w = 0.3e-3;
    Line line = Line.of(strip(x -> 0.84 - d * Math.exp(-x * x / (w * w))));
    double meanMissing = d * w * Math.sqrt(Math.PI) / 2 / LENGTH;
    assertEquals(d - meanMissing, line.dipPct(), 1e-3);
    double half = 0.5 * (d + meanMissing);
    assertEquals(2 * w * Math.sqrt(Math.log(d / half)), line.metres(), 1e-6);
  }

  @Test
  void squareDip() {
    double h = 0.25e-3;
    Line line = Line.of(strip(x -> x < h ? 0.5 : 0.8));
    assertEquals(0.3 * (1 - h / LENGTH), line.dipPct(), 1e-3);
    assertEquals(2 * h, line.metres(), 2 * LENGTH / CELLS);
  }

  /** One cell full of carbide inside a square dip, or at its bound, takes its own width off it. */
  @ParameterizedTest
  @ValueSource(ints = {40, 98})
  void carbideInOneCellDoesNotEndALine(int cell) {
    double h = 0.25e-3;
    double at = (cell + 0.5) * LENGTH / CELLS;
    DoubleUnaryOperator square = x -> x < h ? 0.5 : 0.8;
    Line line = Line.of(strip(x -> Math.abs(x - at) < 1e-9 ? 0.9 : square.applyAsDouble(x)));
    assertEquals(2 * h, line.metres(), 4 * LENGTH / CELLS);
  }

  /** The same steel on both sides: the seam inside gives what the mirror gives. */
  @Test
  void seamInside() {
    Strip side = strip(x -> 0.8 - 0.3 * Math.exp(-x / 0.2e-3));
    Line mirror = Line.of(side);
    Line inside = Line.of(side.weldedTo(side));
    assertEquals(mirror.dipPct(), inside.dipPct(), 1e-9);
    assertEquals(mirror.metres(), inside.metres(), 1e-12);
  }

  /** Unlike sides: the dip is their mean, the width their sum. */
  @Test
  void lopsided() {
    Strip left = strip(x -> x < 0.1e-3 ? 0.4 : 0.8);
    Strip right = strip(x -> x < 0.3e-3 ? 0.6 : 0.8);
    Line line = Line.of(left.weldedTo(right));
    double mean = 0.8 - (0.4 * 0.1e-3 + 0.2 * 0.3e-3) / (2 * LENGTH);
    assertEquals(0.5 * ((mean - 0.4) + (mean - 0.6)), line.dipPct(), 1e-3);
    assertEquals(0.4e-3, line.metres(), 3 * LENGTH / CELLS);
  }

  @Test
  void noLineWhereCarbonIsEvenOrRaised() {
    assertEquals(new Line(0, 0), Line.of(strip(x -> 0.8 + 0.1 * Math.exp(-x / 1e-4))));
    Line even = Line.of(strip(x -> 0.8));
    assertEquals(0, even.dipPct(), 1e-12);
    assertFalse(LineVisibility.USUAL.shows(even, 1));
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
    Line line = Line.of(strip(x -> 0.8).weldedTo(Strip.of(nickel, metres, ratio)));
    assertEquals(0, line.dipPct(), 1e-9);
  }

  @Test
  void showsFromADipAndAWidthOnTheFace() {
    LineVisibility v = LineVisibility.USUAL;
    assertTrue(v.shows(new Line(0.10, 0.10e-3), 1));
    assertFalse(v.shows(new Line(0.099, 1e-3), 1));
    assertFalse(v.shows(new Line(0.5, 0.05e-3), 1));
    assertTrue(v.shows(new Line(0.5, 0.05e-3), 2));
    assertTrue(new LineVisibility(0.06, 0.1e-3).shows(new Line(0.07, 0.2e-3), 1));
  }

  private static Strip strip(DoubleUnaryOperator percent) {
    double[] metres = new double[CELLS];
    double[] ratio = new double[CELLS];
    Arrays.fill(metres, LENGTH / CELLS);
    for (int i = 0; i < CELLS; i++) {
      ratio[i] = STEEL.lattice().ratio(percent.applyAsDouble((i + 0.5) * LENGTH / CELLS));
    }
    return Strip.of(STEEL, metres, ratio);
  }
}
