package seamsoak.face;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.support.Walks;

/** A square bar of pieces of which every other one is turned looks the same upside down. */
class TurnedPiecesTest {
  private static final Shop SHOP =
      new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.SAMPLE);

  @ParameterizedTest
  @ValueSource(ints = {2, 4})
  void upsideDown(int pieces) throws IOException {
    String unlike =
        Files.readString(Path.of("alloy-data/billets/mosaic.json"))
            .replace("\"1084\", \"75Ni8\"", "\"1095\", \"1018\"")
            .replace(
                "\"across\": 2, \"high\": 2",
                "\"across\": N, \"high\": N".replace("N", "" + pieces));
    Billet billet = Walks.billet(unlike).first(5);
    List<Stage> stages = new BilletWalk(SHOP).walk(billet);
    FaceField face = FaceField.of(billet, stages, stages.get(5).piece(), SHOP);
    FaceField.Look look = face.new Look();
    double most = 0;
    double least = 1;
    for (int i = 1; i < 200; i++) {
      for (int k = 1; k < 200; k++) {
        double x = (i / 200.0 - 0.5003) * face.acrossMetres();
        double y = (k / 200.0 - 0.5003) * face.upMetres();
        look.at(x, y);
        double here = look.percent();
        look.at(-x, -y);
        assertEquals(here, look.percent(), 1e-6, x + " " + y);
        most = Math.max(most, here);
        least = Math.min(least, here);
      }
    }
    assertTrue(most > 0.6 && least < 0.3, "there is something to see: " + least + " to " + most);
  }

  /** Of three by three the piece in the middle is that of a corner, but for the skin. */
  @Test
  void nine() throws IOException {
    String unlike =
        Files.readString(Path.of("alloy-data/billets/mosaic.json"))
            .replace("\"1084\", \"75Ni8\"", "\"1095\", \"1018\"")
            .replace("\"across\": 2, \"high\": 2", "\"across\": 3, \"high\": 3");
    Billet billet = Walks.billet(unlike).first(5);
    List<Stage> stages = new BilletWalk(SHOP).walk(billet);
    FaceField face = FaceField.of(billet, stages, stages.get(5).piece(), SHOP);
    FaceField.Look look = face.new Look();
    double piece = face.acrossMetres() / 3;
    for (int i = -20; i <= 20; i++) {
      for (int k = -20; k <= 20; k++) {
        // the middle of each, away from seams and from the skin
        double x = 0.0151 * i * piece;
        double y = 0.0151 * k * piece;
        look.at(x, y);
        double middle = look.percent();
        look.at(x - piece, y + piece);
        assertEquals(middle, look.percent(), 0.02, x + " " + y);
      }
    }
  }
}
