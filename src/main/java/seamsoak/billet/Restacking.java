package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import seamsoak.carbon.Strip;

/**
 * A bar cut in pieces and stacked again.
 *
 * @param across pieces side by side
 * @param high pieces on top of each other
 * @param turn which pieces are given a quarter turn about their length
 * @param kerfMetres lost in each cut
 */
record Restacking(int across, int high, Turn turn, double kerfMetres) {
  /** How far from square a bar may be whose pieces are turned. */
  private static final double SQUARE_WITHIN = 0.02;

  /**
   * The stack, its new faces loose.
   *
   * @param step number of the step
   * @throws IllegalArgumentException with a sentence when it cannot be done
   */
  Workpiece of(Workpiece bar, int step, Resolution resolution) {
    Size s = bar.size();
    double ratio = s.widthMetres() / s.thicknessMetres();
    if (turn != Turn.NONE && Math.abs(ratio - 1) > SQUARE_WITHIN) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "pieces of a bar %.1f x %.1f mm cannot be turned and lie flush",
              s.widthMetres() * 1e3,
              s.thicknessMetres() * 1e3));
    }
    int pieces = across * high;
    double length = (s.lengthMetres() - (pieces - 1) * kerfMetres) / pieces;
    if (length <= 0) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a bar %.1f mm long does not give %d pieces with cuts of %.1f mm",
              s.lengthMetres() * 1e3,
              pieces,
              kerfMetres * 1e3));
    }
    Workpiece piece = turn == Turn.ALL ? quarterTurned(bar) : bar;
    Strip side = Workpiece.face(piece.widthSkin(), 0, resolution);
    Strip top = Workpiece.face(piece.thicknessSkin(), 0, resolution);
    boolean mixed = turn == Turn.ALTERNATE;
    List<Joint> joints = new ArrayList<>();
    String name = "restack " + step;
    if (across > 1) {
      joints.add(
          new Joint(
              name + " side by side",
              Family.Kind.SEAM,
              step,
              1,
              across - 1,
              Direction.WIDTH,
              side,
              mixed ? top : side));
    }
    if (high > 1) {
      joints.add(
          new Joint(
              name + " one on another",
              Family.Kind.SEAM,
              step,
              1,
              high - 1,
              Direction.THICKNESS,
              top,
              mixed ? side : top));
    }
    Size stacked =
        new Size(
            length, across * piece.size().widthMetres(), high * piece.size().thicknessMetres());
    return piece
        .withFamilies(mixed ? Restacking::half : f -> f)
        .withSize(stacked)
        .withSkins(top, side)
        .withJoints(joints, new Loose.Nothing());
  }

  private static Workpiece quarterTurned(Workpiece bar) {
    Size s = bar.size();
    return bar.withFamilies(all -> all.stream().map(f -> f.turned(f.share())).toList())
        .withSkins(bar.widthSkin(), bar.thicknessSkin())
        .withSize(new Size(s.lengthMetres(), s.thicknessMetres(), s.widthMetres()));
  }

  /** Half of the pieces stay as they were, half are turned. */
  private static List<Family> half(List<Family> all) {
    List<Family> split = new ArrayList<>();
    for (Family f : all) {
      split.add(f.withShare(f.share() / 2));
      split.add(f.turned(f.share() / 2));
    }
    return split;
  }
}
