package seamsoak.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Blade;
import seamsoak.unit.Length;

/**
 * Where a blade lies in a billet, m from the middle of the shown face: its edge below, or on the
 * left of a bar's end, and in the middle of the thickness, where bevels from both faces meet.
 *
 * @param along from its tip to its heel; of a bar's end, its thickness at the spine
 * @param tip where it begins along the bar
 * @param width from spine to edge
 * @param blade as it is stated
 */
public record BladeOutline(double tip, double along, double width, Blade blade) {
  /** A line drawn from one point to another, m. */
  record Stroke(double x1, double y1, double x2, double y2) {}

  /**
   * The blade of a billet, no larger than that.
   *
   * @param shownMetres so long where it is not stated
   * @param tipMetres from the left end of the bar to its tip; empty for the middle of the bar
   */
  public static BladeOutline of(
      FaceField face, Blade blade, double shownMetres, Optional<Length> tipMetres) {
    double bar = face.acrossMetres();
    double wide = face.isPlan() ? face.upMetres() : bar;
    double width = Math.min(wide, blade.width().map(Length::metres).orElse(wide));
    if (!face.isPlan()) {
      double thick = face.upMetres();
      return new BladeOutline(
          0, Math.min(thick, blade.thickness().map(Length::metres).orElse(thick)), width, blade);
    }
    double length = Math.min(bar, blade.length().map(Length::metres).orElse(shownMetres));
    double tip = tipMetres.map(Length::metres).orElse((bar - length) / 2);
    return new BladeOutline(tip - bar / 2, length, width, blade);
  }

  /** Where it ends along the bar. */
  public double heel() {
    return tip + along;
  }

  /** How far its edge lies from the middle of the bar, m. */
  double edge() {
    return -width / 2;
  }

  /** What is drawn of it. */
  List<Stroke> strokes(boolean plan) {
    return plan ? fromAbove() : inSection();
  }

  private List<Stroke> fromAbove() {
    double heel = heel();
    double half = width / 2;
    List<Stroke> all =
        new ArrayList<>(
            List.of(
                new Stroke(tip, -half, heel, -half),
                new Stroke(heel, -half, heel, half),
                new Stroke(heel, half, tip, half),
                new Stroke(tip, half, tip, -half)));
    if (isHalf()) {
      all.add(new Stroke(tip, 0, heel, 0));
    }
    return all;
  }

  /** Else it is ground from the spine on, before the quench or after. */
  private boolean isHalf() {
    return blade.bevel().filter(b -> b == Blade.Bevel.HALF).isPresent();
  }

  private List<Stroke> inSection() {
    double half = width / 2;
    double spine = along / 2;
    double thin = Math.min(spine, blade.edge().map(Length::metres).orElse(0.0) / 2);
    double shoulder = isHalf() ? 0 : half;
    List<Stroke> all = new ArrayList<>();
    for (int side : new int[] {-1, 1}) {
      all.add(new Stroke(-half, side * thin, shoulder, side * spine));
      all.add(new Stroke(shoulder, side * spine, half, side * spine));
    }
    all.add(new Stroke(-half, -thin, -half, thin));
    all.add(new Stroke(half, -spine, half, spine));
    return all;
  }
}
