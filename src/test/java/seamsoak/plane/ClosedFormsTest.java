package seamsoak.plane;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.numbers.gamma.Erf;
import org.apache.commons.numbers.gamma.Erfc;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The solver against what constant diffusivity gives in closed form: within a thousandth of the
 * carbon at the start.
 */
class ClosedFormsTest {
  private static final double D = 2.5e-10;
  private static final double MINUTES = 10;
  private static final double SECONDS = 60 * MINUTES;
  private static final double PIECE = 8e-3;
  private static final PlaneMetal METAL = new EvenMetal(1, D);
  private static final Mesh MESH = Mesh.FINE;
  private static final double WITHIN = 1e-3;

  /** Takes all carbon from a bare face, half from a covered one; eats nothing. */
  private static final PlaneFire STILL = new PlaneFire(t -> 0, t -> 0);

  private static Axis axis() {
    return Axis.of(PIECE, Line.OUTSIDE, Line.OUTSIDE);
  }

  /**
   * Faces decarburized for a time, joined, and left for another: the seam wins back (2/pi)
   * atan(sqrt(second/first)) of its dip, and where two such seams cross the two multiply.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 4})
  void seamsAndCrossingsOfDecarburizedFaces(double times) {
    Bench bench = new Bench(new Furnace(STILL, MESH));
    Plate piece = Plate.of(METAL, axis(), axis());
    List<Stay> stays = List.of(Stay.hold(1200, MINUTES), Stay.hold(1200, times * MINUTES));
    Plate whole =
        bench.welded(Bench.restacked(piece, 2, 2, false), Sides.NONE, Line.seam("seam"), stays);
    Reading reading = new Reading(whole, METAL);
    double back = 2 / Math.PI * Math.atan(Math.sqrt(times));
    // covered faces were held at half
    double seam = 0.5 + 0.5 * back;
    double crossing = 0.5 + 0.5 * back * back;
    int line = Reading.line(whole.up(), "seam");
    assertEquals(seam, reading.onLine(line, 0.5 * PIECE), WITHIN);
    assertEquals(crossing, reading.crossing(line, line), WITHIN);
  }

  /** Two pieces side by side, one of them turned: one standing seam all along, and no other. */
  @Test
  void twoPiecesSideBySide() {
    Bench bench = new Bench(new Furnace(STILL, Mesh.USUAL));
    Plate piece = Plate.of(METAL, axis(), axis());
    List<Stay> stays = List.of(Stay.hold(1200, MINUTES), Stay.hold(1200, MINUTES));
    Plate whole =
        bench.welded(Bench.restacked(piece, 2, 1, true), Sides.NONE, Line.seam("seam"), stays);
    Reading across = new Reading(whole.exchanged(), METAL);
    int line = Reading.line(whole.across(), "seam");
    assertEquals(2 * PIECE, whole.across().metres(), 1e-9);
    assertEquals(PIECE, whole.up().metres(), 1e-9);
    for (double share : new double[] {0.1, 0.5, 0.9}) {
      assertEquals(0.75, across.onLine(line, share * PIECE), 2 * WITHIN);
    }
    assertEquals(1, new Reading(whole, METAL).atPlace(0.5 * PIECE, 0.1 * PIECE), WITHIN);
  }

  /** The skin below scale that grows by a parabola keeps its shape; cells half as wide help. */
  @Test
  void skinBelowGrowingScale() {
    double finest = skinOff(Mesh.FINEST);
    double fine = skinOff(Mesh.FINE);
    assertTrue(finest < WITHIN, () -> "off by " + finest);
    assertTrue(finest < 0.5 * fine, () -> finest + " against " + fine);
  }

  private static double skinOff(Mesh mesh) {
    double k = 3e-11;
    PlaneFire fire = new PlaneFire(t -> 0.1, t -> k);
    Plate bar = Plate.of(METAL, axis(), Axis.of(1e-3, Line.MIDDLE, Line.MIDDLE));
    Furnace.Fired fired =
        new Furnace(fire, mesh).heat(bar, Stay.hold(1200, MINUTES), new Sides(1, 0, 0, 0));
    double eaten = Math.sqrt(2 * k * SECONDS);
    assertEquals(eaten, fired.eaten(), 1e-9);
    assertEquals(PIECE - eaten, fired.plate().across().metres(), 1e-9);
    Reading reading = new Reading(fired.plate(), METAL);
    double length = 2 * Math.sqrt(D * SECONDS);
    double most = 0;
    for (double depth = 0.05e-3; depth < 2e-3; depth += 0.1e-3) {
      double lacks = 0.9 * Erfc.value((depth + eaten) / length) / Erfc.value(eaten / length);
      most = Math.max(most, Math.abs(1 - lacks - reading.atPlace(depth, 0.5e-3)));
    }
    return most;
  }

  /** Two metals of unlike diffusivity: their face settles at once. */
  @Test
  void faceBetweenUnlikeMetals() {
    PlaneMetal slow = new EvenMetal(0.2, D / 4);
    Axis up = Axis.of(1e-3, Line.MIDDLE, Line.MIDDLE);
    Plate couple = Plate.of(METAL, axis(), up).beside(Plate.of(slow, axis(), up), Line.seam("x"));
    Plate after =
        new Furnace(STILL, MESH).heat(couple, Stay.hold(1200, MINUTES), Sides.NONE).plate();
    double face = (2 * 1 + 1 * 0.2) / 3;
    Reading across = new Reading(after.exchanged(), METAL);
    assertEquals(face, across.onLine(1, 0.5e-3), WITHIN);
    double depth = 0.4e-3;
    double expected = face + (1 - face) * Erf.value(depth / (2 * Math.sqrt(D * SECONDS)));
    assertEquals(expected, new Reading(after, METAL).atPlace(PIECE - depth, 0.5e-3), WITHIN);
  }

  /** Round a ring nothing has an end: a dip in the joint spreads to both sides alike. */
  @Test
  void ringHasNoEnd() {
    Plate bar = Plate.of(METAL, Axis.of(1e-3, Line.MIDDLE, Line.MIDDLE), axis());
    Furnace furnace = new Furnace(STILL, MESH);
    Plate open = furnace.heat(bar, Stay.hold(1200, MINUTES), new Sides(0, 0, 1, 1)).plate();
    Plate ring =
        furnace
            .heat(open.closedUp(Line.seam("ring")), Stay.hold(1200, MINUTES), Sides.NONE)
            .plate();
    Reading reading = new Reading(ring, METAL);
    assertEquals(0.5, reading.onLine(0, 0.5e-3), WITHIN);
    assertEquals(reading.atPlace(0.5e-3, 0.3e-3), reading.atPlace(0.5e-3, PIECE - 0.3e-3), 1e-4);
  }

  /** All that happens to real plates at once: carbon that left and carbon that stayed add up. */
  @Test
  void carbonIsAccountedFor() {
    Axis sheet = Axis.of(0.4e-3, Line.OUTSIDE, Line.OUTSIDE);
    Plate body = Plate.of(SectionHistory.BODY, axis(), axis());
    Plate layer = Plate.of(SectionHistory.BRIGHT, sheet, axis());
    Plate plate = layer.beside(body, Line.seam("layer"));
    Furnace furnace = new Furnace(PlaneFire.FORGE, Mesh.USUAL);
    Stay stay = Stay.at(1230, 5);
    // the last heat eats the thin layer wholly
    for (int i = 0; i < 4; i++) {
      Furnace.Fired fired = furnace.heat(plate, stay, new Sides(1, 0.5, 0, 1));
      assertTrue(Math.abs(fired.massError()) < 1e-12, () -> "lost " + fired.massError());
      plate = fired.plate();
    }
    assertEquals(1, plate.across().blocks());
    Furnace.Fired ring =
        furnace.heat(plate.closedUp(Line.seam("ring")), stay, new Sides(1, 1, 0, 0));
    assertTrue(Math.abs(ring.massError()) < 1e-12, () -> "lost " + ring.massError());
    Plate cut = Bench.ground(plate, 0.3e-3);
    assertEquals(plate.across().metres() - 0.6e-3, cut.across().metres(), 1e-12);
    assertEquals(plate.up().metres() - 0.6e-3, cut.up().metres(), 1e-12);
  }
}
