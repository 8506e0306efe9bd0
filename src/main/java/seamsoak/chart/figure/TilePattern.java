package seamsoak.chart.figure;

import java.util.ArrayList;
import java.util.List;
import seamsoak.chart.figure.Pattern.Patch;
import seamsoak.chart.figure.Pattern.Seam;
import seamsoak.chart.figure.Pattern.Spot;

/**
 * Where the layers and seams run in a row of tiles: the bar's cross-section over and over, sheared
 * along the length, then stretched.
 *
 * @param bar cross-section of the bar that was sliced
 * @param radians angle between the cut and the bar's length
 * @param step number of the step that laid the tiles
 * @param along what later steps did to the length, as a factor
 * @param across the same for the width
 * @param up the same for the thickness
 */
public record TilePattern(
    Pattern bar, double radians, int step, double along, double across, double up) {

  public TilePattern stretched(double kAcross, double kUp) {
    return new TilePattern(bar, radians, step, along / (kAcross * kUp), across * kAcross, up * kUp);
  }

  /** Angle between the faces of the tiles and the billet's face. */
  public double faceRadians() {
    return Math.atan(Math.tan(radians) * up / along);
  }

  /** Length of a tile, measured along the billet. */
  private double pitch() {
    return bar.thickness() / Math.sin(radians) * along;
  }

  /** Where the first tile of a shown part begins: a seam is always in sight. */
  private double origin(double length) {
    return Math.min(0, length / 2 - pitch());
  }

  /**
   * Seen from above: length across, width up.
   *
   * @param length of the part shown
   */
  public Pattern top(double length, double width) {
    double pitch = pitch();
    double origin = origin(length);
    double off = (width - bar.width() * across) / 2;
    List<Patch> patches = new ArrayList<>();
    List<Seam> seams = new ArrayList<>();
    for (int tile = 0; origin + tile * pitch < length; tile++) {
      double start = origin + tile * pitch;
      double k = pitch / bar.thickness();
      Pattern piece =
          bar.map(length, width, s -> new Spot(start + s.up() * k, off + s.across() * across));
      patches.addAll(piece.patches());
      seams.addAll(piece.seams());
      if (tile > 0) {
        seams.add(new Seam(step, new Spot(start, 0), new Spot(start, width)));
      }
    }
    return new Pattern(length, width, patches, seams);
  }

  /** Cut lengthwise through the middle: length across, thickness up. */
  public Pattern side(double length, double thickness) {
    double pitch = pitch();
    double origin = origin(length);
    double lean = along / (Math.tan(radians) * up);
    List<Patch> patches = new ArrayList<>();
    List<Seam> seams = new ArrayList<>();
    int before = (int) Math.ceil(lean * thickness / pitch);
    for (double start = origin - before * pitch + lean * thickness;
        start < length + 2 * lean * thickness;
        start += pitch) {
      double k = pitch / bar.thickness();
      for (Patch p : bar.patches()) {
        double low = p.corners().stream().mapToDouble(Spot::up).min().orElse(0);
        double high = p.corners().stream().mapToDouble(Spot::up).max().orElse(0);
        if (crossesMiddle(p)) {
          patches.add(
              new Patch(
                  p.steel(),
                  List.of(
                      new Spot(start + low * k, 0),
                      new Spot(start + high * k, 0),
                      new Spot(start + high * k - lean * thickness, thickness),
                      new Spot(start + low * k - lean * thickness, thickness))));
        }
      }
      for (Seam r : bar.seams()) {
        if (r.from().up() == r.to().up()) {
          seams.add(leaning(r.step(), start + r.from().up() * k, lean, thickness));
        }
      }
      seams.add(leaning(step, start, lean, thickness));
    }
    return new Pattern(length, thickness, patches, seams);
  }

  /** The middle itself is often a seam: the cut runs just beside it. */
  private boolean crossesMiddle(Patch p) {
    double middle = bar.width() * 0.49;
    double left = p.corners().stream().mapToDouble(Spot::across).min().orElse(0);
    double right = p.corners().stream().mapToDouble(Spot::across).max().orElse(0);
    return left < middle && middle <= right;
  }

  private static Seam leaning(int step, double x, double lean, double thickness) {
    return new Seam(step, new Spot(x, 0), new Spot(x - lean * thickness, thickness));
  }
}
