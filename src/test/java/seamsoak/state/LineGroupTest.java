package seamsoak.state;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import seamsoak.carbon.SeamName;

class LineGroupTest {
  private static LineReport line(Optional<Double> widthMm, double trueWidthMm) {
    return new LineReport(
        new Joints(new SeamName(SeamName.Kind.TILES, 3), Joints.Way.IN_A_ROW, List.of()),
        false,
        50,
        "1084",
        0.5,
        0.7,
        0.2,
        widthMm,
        trueWidthMm,
        Optional.empty(),
        Optional.of(1.2),
        true,
        Optional.empty(),
        Optional.empty());
  }

  /** Cut at 30 degrees anything is twice as broad as it is square to itself; at 90 no broader. */
  @Test
  void theAngleIsThatOfTheBroadestLine() {
    LineReport flat = line(Optional.of(2.0), 1);
    LineReport steep = line(Optional.of(1.0), 1);
    LineReport under = line(Optional.empty(), 1);
    assertEquals(30, degrees(flat, steep), 1e-9);
    assertEquals(90, degrees(steep, under), 1e-9);
    assertTrue(new LineGroup(List.of(under)).degreesToFace().isEmpty());
  }

  private static double degrees(LineReport... lines) {
    return new LineGroup(List.of(lines)).degreesToFace().orElseThrow();
  }
}
