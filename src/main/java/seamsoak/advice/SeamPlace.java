package seamsoak.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Contrast;
import seamsoak.carbon.Eye;
import seamsoak.carbon.Line;
import seamsoak.carbon.LineVisibility;
import seamsoak.carbon.Plane;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Strip;

/**
 * The seams of one name on one line of a billet, told by the one of them that shows most.
 *
 * @param line the line through the billet
 * @param plane the seam on it
 * @param trace distances on the shown face over true ones; infinite where the seam makes no line
 * @param contrast as an eye takes it in; empty where it makes no line
 */
record SeamPlace(SectionLine line, Plane plane, double trace, Optional<Contrast> contrast) {

  /** All places of a piece whose faces are welded, in the order in which their seams were made. */
  static List<SeamPlace> of(Workpiece piece, LineVisibility visibility) {
    List<SeamPlace> all = new ArrayList<>();
    piece
        .lines()
        .filter(SectionLine::isWelded)
        .forEach(line -> all.addAll(of(line, line.trace(piece.shownFace()), visibility)));
    all.sort((a, b) -> Integer.compare(a.plane.name().step(), b.plane.name().step()));
    return List.copyOf(all);
  }

  private static List<SeamPlace> of(SectionLine line, double trace, LineVisibility visibility) {
    Map<SeamName, SeamPlace> worst = new LinkedHashMap<>();
    for (Plane p : line.strip().planes()) {
      SeamPlace here = at(line, p, trace, visibility);
      worst.merge(p.name(), here, (a, b) -> a.depth() >= b.depth() ? a : b);
    }
    return List.copyOf(worst.values());
  }

  private static SeamPlace at(
      SectionLine line, Plane plane, double trace, LineVisibility visibility) {
    return new SeamPlace(
        line,
        plane,
        trace,
        Double.isFinite(trace)
            ? Optional.of(new Eye(line.strip(), plane, trace, visibility).on(line.strip()))
            : Optional.empty());
  }

  /** What decides which of several alike is told. */
  private double depth() {
    return contrast.map(Contrast::missingPct).orElseGet(() -> carbon().depthPct());
  }

  /** The line of missing carbon at it. */
  Line carbon() {
    return Line.of(line.strip(), plane);
  }

  boolean shows(LineVisibility visibility) {
    return contrast.map(c -> c.over(visibility) >= 1).orElse(false);
  }

  /** Whether it parts unlike layers. */
  boolean isBoundary() {
    Strip strip = line.strip();
    int face = plane.face();
    return face > 0 && face < strip.cells() && !strip.metal(face - 1).equals(strip.metal(face));
  }

  /** Whether it is one of the layers, which never cross: turned pieces have theirs elsewhere. */
  boolean isOfLayers() {
    return plane.name().kind() == SeamName.Kind.LAYERS;
  }

  /** Which seams, as answers show it. */
  String name() {
    Strip strip = line.strip();
    int face = plane.face();
    return switch (plane.name().kind()) {
      case LAYERS ->
          isBoundary()
              ? "layers " + strip.metal(face - 1).name() + " | " + strip.metal(face).name()
              : "layers of " + strip.metal(Math.min(face, strip.cells() - 1)).name();
      case RESTACK ->
          plane.name()
              + (line.kind() == SectionLine.Kind.WIDTH ? " side by side" : " one on another");
      case TILES -> plane.name().toString();
    };
  }

  /**
   * Least width that a line of missing carbon can have here by now, square to the seam, m: that of
   * one that began infinitely thin, until the seams next to it come in and it is a third of their
   * distance.
   */
  double narrowestMetres() {
    return Math.min(plane.narrowestMetres(), spacingMetres() / 3);
  }

  /** To the next seam; where none follows, to the mirror image of this one. */
  private double spacingMetres() {
    Strip strip = line.strip();
    double near = 0;
    double far = 0;
    int before = 0;
    int after = strip.cells();
    boolean seamBefore = false;
    boolean seamAfter = false;
    for (Plane p : strip.planes()) {
      if (p.face() < plane.face()) {
        before = p.face();
        seamBefore = true;
      } else if (p.face() > plane.face() && !seamAfter) {
        after = p.face();
        seamAfter = true;
      }
    }
    for (int i = before; i < plane.face(); i++) {
      near += strip.metres(i);
    }
    for (int i = plane.face(); i < after; i++) {
      far += strip.metres(i);
    }
    near = near == 0 ? Double.POSITIVE_INFINITY : seamBefore ? near : 2 * near;
    far = far == 0 ? Double.POSITIVE_INFINITY : seamAfter ? far : 2 * far;
    return Math.min(near, far);
  }
}
