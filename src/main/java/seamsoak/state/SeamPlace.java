package seamsoak.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Eye;
import seamsoak.carbon.Line;
import seamsoak.carbon.LineBounds;
import seamsoak.carbon.Plane;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Sight;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripLines;

/**
 * The seams that are told together on one line of a billet, told by the one of them that lacks
 * most.
 *
 * @param line the line through the billet
 * @param plane the seam on it
 * @param carbon the line of missing carbon at it
 * @param corePct the most carbon anywhere on the line through the billet, in the seam's steel, wt%
 * @param trace distances on the shown face over true ones; infinite where the seam makes no line
 * @param sight as an eye takes it in; empty where it makes no line
 */
public record SeamPlace(
    SectionLine line,
    Plane plane,
    Line carbon,
    double corePct,
    double trace,
    Optional<Sight> sight) {

  /** All places of a piece whose faces are welded, in the order in which their seams were made. */
  public static List<SeamPlace> of(Workpiece piece, double broadMetres) {
    List<SeamPlace> all = new ArrayList<>();
    piece
        .lines()
        .filter(SectionLine::isWelded)
        .forEach(line -> all.addAll(of(line, line.trace(piece.shownFace()), broadMetres)));
    all.sort(Comparator.comparingInt(p -> p.plane.name().step()));
    return List.copyOf(all);
  }

  /** The same as an eye of middling breadth sees them. */
  public static List<SeamPlace> of(Workpiece piece) {
    return of(piece, Eye.BROAD_METRES);
  }

  private static List<SeamPlace> of(SectionLine line, double trace, double broadMetres) {
    StripLines lines = new StripLines(line.strip());
    Map<Joints, Plane> worst = new LinkedHashMap<>();
    for (Plane p : line.strip().planes()) {
      worst.merge(
          joints(line, p), p, (a, b) -> lines.at(a).depthPct() >= lines.at(b).depthPct() ? a : b);
    }
    return worst.values().stream()
        .map(
            p ->
                new SeamPlace(
                    line,
                    p,
                    lines.at(p),
                    lines.corePct(p),
                    trace,
                    Double.isFinite(trace)
                        ? Optional.of(
                            new Eye(line.strip(), p, trace, broadMetres)
                                .on(line.strip(), lines.at(p)))
                        : Optional.empty()))
        .toList();
  }

  /** The most carbon missing at any seam, wt%. */
  public static double deepestPct(List<SeamPlace> places) {
    return places.stream().mapToDouble(p -> p.carbon.depthPct()).max().orElse(0);
  }

  /** K in an etch; 0 where it makes no line. */
  public double contrast(Etch etch) {
    return sight.map(s -> etch.contrast(carbon.steel(), s)).orElse(0.0);
  }

  /** Whether it parts unlike layers. */
  boolean isBoundary() {
    return isBoundary(line.strip(), plane.face());
  }

  private static boolean isBoundary(Strip strip, int face) {
    return face > 0 && face < strip.cells() && !strip.metal(face - 1).equals(strip.metal(face));
  }

  /** Whether it is one of the layers, which never cross: turned pieces have theirs elsewhere. */
  boolean isOfLayers() {
    return plane.name().kind() == SeamName.Kind.LAYERS;
  }

  /** Which seams. */
  public Joints joints() {
    return joints(line, plane);
  }

  /** Which seams one on a line belongs to. */
  public static Joints joints(SectionLine line, Plane plane) {
    Strip strip = line.strip();
    int face = plane.face();
    SeamName made = plane.name();
    return switch (made.kind()) {
      case LAYERS -> {
        String far = strip.metal(Math.min(face, strip.cells() - 1)).name();
        yield isBoundary(strip, face)
            ? new Joints(made, Joints.Way.UNLIKE, List.of(strip.metal(face - 1).name(), far))
            : new Joints(made, Joints.Way.LIKE, List.of(far));
      }
      case RESTACK ->
          new Joints(
              made,
              line.kind() == SectionLine.Kind.WIDTH
                  ? Joints.Way.SIDE_BY_SIDE
                  : Joints.Way.ONE_ON_ANOTHER,
              List.of());
      case TILES -> new Joints(made, Joints.Way.IN_A_ROW, List.of());
    };
  }

  /**
   * Least width that a line of missing carbon can have here by now, square to the seam, m: that of
   * one that began infinitely thin, until the seams next to it come in and it is a third of their
   * distance.
   */
  public double narrowestMetres() {
    LineBounds bounds = LineBounds.of(line.strip(), plane);
    double near = 2 * bounds.nearMetres(line.strip());
    double far = 2 * bounds.farMetres(line.strip());
    // a seam at the end of a strip has all its metal on the other side
    double spacing = near == 0 ? far : far == 0 ? near : Math.min(near, far);
    return Math.min(plane.narrowestMetres(), spacing / 3);
  }
}
