package seamsoak.face;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.SectionLine.Kind;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Eye;
import seamsoak.property.etch.Tone;
import seamsoak.state.AsCooled;
import seamsoak.state.Etch;
import seamsoak.state.EtchBand;
import seamsoak.state.SeamPlace;
import seamsoak.support.Walks;

/**
 * Contrast of a line measured in the picture's own pixels, against that of the line: by the means
 * over 0.06 and 3 mm about the seam, where no other seam is near, in that steel in which it shows
 * most. Lines are measured to a tenth of their contrast, faint ones to the level of lightness that
 * pixels are rounded to.
 */
@Tag("slow")
@Tag("long")
class FaceContrastTest {
  /** In an ordinary build. */
  private static final int SAMPLE = 4;

  private static final double WITHIN = 0.10;
  private static final double FINE_MM = 0.06;
  private static final double REACH = 5;
  private static final Shop SHOP = new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.FINE);
  private static final Tone TONE = Walks.CORRELATIONS.etching().tone();

  /** Beyond that a picture is as white as it gets. */
  private static final double MOST = 3;

  private static final String MOSAIC = "alloy-data/billets/mosaic.json";

  /** A billet up to one of its steps, and how it is etched. */
  private record Case(String name, String text, int step, boolean hardened) {
    @Override
    public String toString() {
      return name + " after step " + step + (hardened ? ", hardened" : "");
    }
  }

  static Stream<Case> billets() throws IOException {
    String mosaic = Files.readString(Path.of(MOSAIC));
    String layers =
        "\"layers\": 13, \"steels\": [\"1084\", \"75Ni8\"], \"thickness\": [\"1/8 in\", \"3/32 in\"]";
    assertTrue(mosaic.contains(layers));
    String solid =
        mosaic.replace(
            layers, "\"layers\": 1, \"steels\": [\"1084\"], \"thickness\": \"1-7/16 in\"");
    String many =
        mosaic.replace(
            layers,
            "\"layers\": 25, \"steels\": [\"1095\", \"75Ni8\"], \"thickness\": [\"1/16 in\", \"3/64 in\"]");
    String bare =
        mosaic.replace(
            ",\n      \"jacket\": { \"steel\": \"1008\", \"thickness\": \"0.045 in\", \"coating\": \"none\" }",
            "");
    String flat = mosaic.replace("\"turn\": \"alternate\", ", "");
    String steep = mosaic.replace("\"angle\": \"45 deg\"", "\"angle\": \"60 deg\"");
    assertTrue(!bare.equals(mosaic) && !flat.equals(mosaic) && !steep.equals(mosaic));
    Stream<Case> all =
        Stream.of(
            new Case("mosaic", mosaic, 5, false),
            new Case("mosaic", mosaic, 10, false),
            new Case("mosaic", mosaic, 13, false),
            new Case("mosaic", mosaic, 15, false),
            new Case("mosaic", mosaic, 15, true),
            new Case("one solid bar", solid, 5, false),
            new Case("one solid bar", solid, 15, false),
            new Case("one solid bar", solid, 15, true),
            new Case("25 layers", many, 15, true),
            new Case("without a jacket", bare, 13, false),
            new Case("none turned", flat, 15, false),
            new Case("steep tiles", steep, 15, false));
    return Boolean.getBoolean("long") ? all : all.limit(SAMPLE);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("billets")
  void contrastInThePixelsIsThatOfTheLine(Case c) {
    Billet billet = Walks.billet(c.text()).first(c.step());
    List<Stage> stages = new BilletWalk(SHOP).walk(billet);
    Stage last = stages.get(c.step());
    EtchBand band =
        c.hardened()
            ? EtchBand.hardened(SHOP, billet.stack(), last.piece(), 810)
            : AsCooled.of(SHOP, billet.stack()).after(last);
    Etch etch = band.at(SHOP.assumptions().ferritePlace());
    FaceField face = FaceField.of(billet, stages, last.piece(), SHOP);
    FaceSize size = FaceSize.of(face, 0.08, 2400, 1200);
    Measured measured =
        new Measured(face, last.piece(), FacePicture.of(face, SHOP, etch, size, false));
    int told = 0;
    for (SeamPlace p : SeamPlace.of(last.piece())) {
      if (p.line().kind() == Kind.LAYERS || p.sight().isEmpty()) {
        continue;
      }
      double line = p.contrast(etch);
      double pixels = measured.contrast(p);
      if (line < MOST) {
        assertEquals(line, pixels, Math.max(WITHIN * line, 1 / TONE.line()), p.joints()::toString);
        assertEquals(line >= 1, pixels >= 1, p.joints()::toString);
        told++;
      }
    }
    assertTrue(told > 0);
  }

  /** A picture and what lies where in it. */
  private static final class Measured {
    /** Of the places along a seam, the share that is darkest: no other seam is near there. */
    private static final double SHARE = 0.25;

    private final FaceField face;
    private final Workpiece piece;
    private final FacePicture picture;
    private final int[] steels;

    Measured(FaceField face, Workpiece piece, FacePicture picture) {
      this.face = face;
      this.piece = piece;
      this.picture = picture;
      steels = steels();
    }

    /** By pixel its steel; -1 where it has several. */
    private int[] steels() {
      FaceSize size = picture.size();
      FaceField.Look look = face.new Look();
      int[] all = new int[size.across() * size.up()];
      double pixel = 1e-3 * size.mmPerPixel();
      for (int i = 0; i < all.length; i++) {
        for (int k = 0; k < 4; k++) {
          double x = i % size.across() + 0.25 + k % 2 * 0.5;
          double y = i / size.across() + 0.25 + k / 2 * 0.5;
          look.at((x - size.across() / 2.0) * pixel, (size.up() / 2.0 - y) * pixel);
          all[i] = k == 0 || all[i] == look.steel() ? look.steel() : -1;
        }
      }
      return all;
    }

    double contrast(SeamPlace p) {
      boolean upright = face.isPlan() == (p.line().kind() == Kind.TILE);
      double most = 0;
      for (int steel = 0; steel < face.steels().size(); steel++) {
        most = Math.max(most, contrast(profile(steel, upright), place(p)));
      }
      return most;
    }

    /** Where the seam lies, mm from the left or from the top of the picture. */
    private double place(SeamPlace p) {
      double on = 1e3 * p.line().strip().metres(0, p.plane().face());
      FaceSize size = picture.size();
      return switch (p.line().kind()) {
        case TILE -> size.acrossMm() / 2 + nearestTile(p, on);
        case THICKNESS -> {
          double half = 1e3 * face.halfThicknessMetres();
          yield size.upMm() / 2 - half + on - 1e3 * piece.jacketMetres(piece.thickness());
        }
        default -> {
          double half = 1e3 * piece.bodySize().widthMetres() / 2;
          double across = on - 1e3 * piece.jacketMetres(piece.width()) - half;
          yield face.isPlan() ? size.upMm() / 2 - across : size.acrossMm() / 2 + across;
        }
      };
    }

    private double nearestTile(SeamPlace p, double on) {
      double period = 1e3 * Profile.period(p.line());
      double down = (on - 1e3 * Profile.begins(p.line())) / period;
      double up = 1e3 * face.halfThicknessMetres() * p.line().normal().thickness();
      int count = piece.tiles().orElseThrow().count();
      double best = Double.POSITIVE_INFINITY;
      for (int k = -count; k <= count; k++) {
        double x = ((k + 1 - down - count / 2.0) * period - up) / p.line().normal().length();
        best = Math.abs(x) < Math.abs(best) ? x : best;
      }
      return best;
    }

    private int pixel(int at, int along, boolean upright) {
      return upright ? along * picture.size().across() + at : at * picture.size().across() + along;
    }

    /** Mean level of one steel by distance square to the seam, where no other seam is near. */
    private double[] profile(int steel, boolean upright) {
      FaceSize size = picture.size();
      int n = upright ? size.across() : size.up();
      int m = upright ? size.up() : size.across();
      double[] mean = new double[m];
      List<Integer> order = new ArrayList<>();
      for (int along = 0; along < m; along++) {
        double sum = 0;
        int count = 0;
        for (int at = 0; at < n; at++) {
          int i = pixel(at, along, upright);
          if (steels[i] == steel) {
            sum += picture.levels()[i] & 0xFF;
            count++;
          }
        }
        mean[along] = sum / count;
        if (count > n / 4) {
          order.add(along);
        }
      }
      order.sort((a, b) -> Double.compare(mean[a], mean[b]));
      double[] profile = new double[n];
      for (int at = 0; at < n; at++) {
        double sum = 0;
        int count = 0;
        for (int along : order.subList(0, (int) Math.ceil(SHARE * order.size()))) {
          int i = pixel(at, along, upright);
          if (steels[i] == steel) {
            sum += picture.levels()[i] & 0xFF;
            count++;
          }
        }
        profile[at] = sum / count;
      }
      return filled(profile);
    }

    /** Straight where the steel is nowhere. */
    private static double[] filled(double[] profile) {
      int known = -1;
      for (int i = 0; i < profile.length; i++) {
        if (!Double.isNaN(profile[i])) {
          for (int k = known + 1; k < i; k++) {
            double share = known < 0 ? 1 : (double) (k - known) / (i - known);
            profile[k] = (known < 0 ? 0 : (1 - share) * profile[known]) + share * profile[i];
          }
          known = i;
        }
      }
      for (int k = known + 1; known >= 0 && k < profile.length; k++) {
        profile[k] = profile[known];
      }
      return profile;
    }

    private double contrast(double[] profile, double place) {
      int seam =
          (int) Math.max(1, Math.min(profile.length - 1, place / picture.size().mmPerPixel()));
      double least =
          Math.max(
              Arrays.stream(profile, 0, seam).min().orElse(0),
              Arrays.stream(profile, seam, profile.length).min().orElse(0));
      return (mean(profile, place, FINE_MM, least)
              - mean(profile, place, 1e3 * Eye.BROAD_METRES, least))
          / TONE.line();
    }

    /** A Gaussian mean about a place; beyond its ends the picture is its own mirror image. */
    private double mean(double[] profile, double place, double sigma, double least) {
      double pixel = picture.size().mmPerPixel();
      int reach = (int) Math.ceil(REACH * sigma / pixel);
      int middle = (int) Math.floor(place / pixel);
      double sum = 0;
      double weights = 0;
      for (int i = middle - reach; i <= middle + reach; i++) {
        double d = ((i + 0.5) * pixel - place) / sigma;
        double weight = Math.exp(-0.5 * d * d);
        int at = Math.floorMod(i, 2 * profile.length);
        at = at < profile.length ? at : 2 * profile.length - 1 - at;
        sum += weight * Math.max(least, profile[at]);
        weights += weight;
      }
      return sum / weights;
    }
  }
}
