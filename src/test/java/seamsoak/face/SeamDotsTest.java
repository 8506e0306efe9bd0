package seamsoak.face;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.carbon.SeamName;
import seamsoak.state.Joints;
import seamsoak.support.Walks;

/** Seams lie in the picture where the carbon is missing. */
class SeamDotsTest {
  private static final Shop SHOP =
      new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.SAMPLE);

  private static FaceField face(String text, int step) {
    Billet billet = Walks.billet(text).first(step);
    List<Stage> stages = new BilletWalk(SHOP).walk(billet);
    return FaceField.of(billet, stages, stages.get(step).piece(), SHOP);
  }

  /** Of one steel, so that nothing but lines is to be seen. */
  private static String solid() throws IOException {
    String mosaic = Files.readString(Path.of("alloy-data/billets/mosaic.json"));
    return mosaic.replaceFirst(
        "\"layers\": 13, \"steels\": \\[[^]]*\\], \"thickness\": \\[[^]]*\\]",
        "\"layers\": 1, \"steels\": [\"1084\"], \"thickness\": \"1-7/16 in\"");
  }

  private static double carbon(FaceField face, FaceSize size, double across, double down) {
    FaceField.Look look = face.new Look();
    look.at(1e-3 * (across - size.acrossMm() / 2), 1e-3 * (size.upMm() / 2 - down));
    return look.percent();
  }

  /** There is less carbon at a dot than half a millimetre and more off on both sides of it. */
  private static void isDarkest(FaceField face, FaceSize size, SeamDots seams, boolean upright) {
    int counted = 0;
    int least = 0;
    for (SeamDots.Dot dot : seams.dots()) {
      double off = 1.2;
      double here = carbon(face, size, dot.across(), dot.down());
      double before =
          upright
              ? carbon(face, size, dot.across() - off, dot.down())
              : carbon(face, size, dot.across(), dot.down() - off);
      double after =
          upright
              ? carbon(face, size, dot.across() + off, dot.down())
              : carbon(face, size, dot.across(), dot.down() + off);
      counted++;
      least += here < before && here < after ? 1 : 0;
    }
    assertTrue(least > 0.9 * counted, seams.joints() + ": " + least + " of " + counted);
  }

  @Test
  void onTilesLeaningAndLevel() throws IOException {
    FaceField face = face(solid(), 15);
    FaceSize size = FaceSize.of(face, 0, 1280, 960);
    List<SeamDots> all = SeamDots.of(face, size);
    assertEquals(5, all.size(), all::toString);
    for (SeamDots seams : all) {
      Joints joints = seams.joints();
      if (joints.made().kind() == SeamName.Kind.TILES || joints.made().step() == 8) {
        isDarkest(face, size, seams, joints.way() != Joints.Way.SIDE_BY_SIDE);
      }
    }
    assertTrue(all.stream().mapToInt(s -> s.dots().size()).sum() <= 4000);
  }

  @Test
  void onTheEndOfABar() throws IOException {
    FaceField face = face(solid(), 10);
    FaceSize size = FaceSize.of(face, 0, 1280, 960);
    List<SeamDots> all = SeamDots.of(face, size);
    assertEquals(4, all.size(), all::toString);
    for (SeamDots seams : all) {
      isDarkest(face, size, seams, seams.joints().way() == Joints.Way.SIDE_BY_SIDE);
    }
  }

  /** Boundaries of three layers, mirrored about the middle. */
  @Test
  void betweenLayers() throws IOException {
    String text = Files.readString(Path.of("alloy-data/billets/san-mai.json"));
    FaceField face = face(text, Walks.billet(text).steps().size());
    FaceSize size = FaceSize.of(face, 0, 1280, 960);
    List<SeamDots> all = SeamDots.of(face, size);
    assertEquals(1, all.size(), all::toString);
    double[] down = all.get(0).dots().stream().mapToDouble(SeamDots.Dot::down).distinct().toArray();
    assertEquals(2, down.length);
    assertEquals(size.upMm(), down[0] + down[1], 0.05, "looked for in such steps");
  }
}
