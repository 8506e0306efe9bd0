package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import seamsoak.carbon.Edge;
import seamsoak.carbon.MeanSteel;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Regrid;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Strip;

/**
 * A straight line through a billet, square to all the seams that lie on it: skins, seams and the
 * metal between are places on it. Where the billet is the same from both ends only half is kept, up
 * to the middle.
 *
 * @param kind what it runs through
 * @param normal its direction
 * @param share share of all pieces in which it runs this way
 * @param parts its metal in order; more than one while faces lie against each other unwelded
 * @param near what lies beyond the first part
 * @param far what lies beyond the last part
 * @param joins which seam the faces between the parts will be
 */
public record SectionLine(
    Kind kind,
    Direction normal,
    double share,
    List<Strip> parts,
    End near,
    End far,
    SeamName joins) {

  /** What a line runs through. */
  public enum Kind {
    /** The billet, from face to face. */
    THICKNESS,
    /** The billet, from side to side. */
    WIDTH,
    /** A tile, from one tile seam to the next. */
    TILE,
    /** Two neighboring layers, from middle to middle. */
    LAYERS
  }

  /** What lies beyond an end of a line. */
  public enum End {
    /** The fire, or a jacket not welded yet. */
    OUTSIDE,
    /** The mirror image, welded or never parted. */
    MIRROR,
    /** Another face, not welded yet: the line's own mirror image or its other end. */
    GAP
  }

  public SectionLine {
    parts = List.copyOf(parts);
  }

  /** A line from an outer face to the middle of one piece. */
  static SectionLine half(Kind kind, Direction normal, Strip strip) {
    return new SectionLine(
        kind, normal, 1, List.of(strip), End.OUTSIDE, End.MIRROR, SeamName.LAYERS);
  }

  /** Whether none of its faces is loose. */
  public boolean isWelded() {
    return parts.size() == 1 && near != End.GAP && far != End.GAP;
  }

  /** All of its metal; only while nothing is loose. */
  public Strip strip() {
    if (parts.size() > 1) {
      throw new IllegalStateException("the faces of " + joins + " are not welded");
    }
    return parts.get(0);
  }

  /** Whether it ends in the middle of the billet and its mirror image follows. */
  public boolean isHalf() {
    return far != End.OUTSIDE && !(near == End.GAP && far == End.GAP);
  }

  /** Whether it is half a line that ends in the middle of a piece, not at a seam. */
  boolean endsInMetal() {
    if (parts.size() > 1) {
      return false;
    }
    Strip last = parts.get(parts.size() - 1);
    return far == End.MIRROR && !last.hasSeamAt(last.cells());
  }

  /** Length from one end to the other, the mirror image counted, m. */
  double metres() {
    double sum = parts.stream().mapToDouble(Strip::metres).sum();
    return isHalf() ? 2 * sum : sum;
  }

  /** From the near face as deep as the middle; of a stack of loose pieces, the outer one. */
  public Strip toMiddle() {
    Strip whole = parts.get(0);
    if (isHalf() || parts.size() > 1) {
      return whole;
    }
    return whole.part(0, whole.middleCell() + 1);
  }

  /** The outer faces, each from the face inward to the middle. */
  public List<Strip> skins() {
    return isHalf() || near != End.OUTSIDE
        ? List.of(toMiddle())
        : List.of(toMiddle(), with(List.of(parts.get(parts.size() - 1).reversed())).toMiddle());
  }

  /** Width of a line on a face over its true width, infinite where it makes none. */
  public double trace(Direction shownFace) {
    return normal.traceOn(shownFace);
  }

  SectionLine with(List<Strip> next) {
    return new SectionLine(kind, normal, share, next, near, far, joins);
  }

  SectionLine with(Direction next, double nextShare) {
    return new SectionLine(kind, next, nextShare, parts, near, far, joins);
  }

  /** One stay in the fire. */
  SectionLine heated(Fire fire, Edge outside, Edge faces) {
    List<Strip> next = new ArrayList<>();
    int last = parts.size() - 1;
    for (int i = 0; i <= last; i++) {
      Edge a = i == 0 ? edge(near, outside, faces) : faces;
      Edge b = i == last ? edge(far, outside, faces) : faces;
      next.add(fire.through(parts.get(i), a, b));
    }
    return with(next);
  }

  /** What the fire does to one strip. */
  interface Fire {
    Strip through(Strip strip, Edge near, Edge far);
  }

  private static Edge edge(End end, Edge outside, Edge faces) {
    return switch (end) {
      case OUTSIDE -> outside;
      case MIRROR -> Edge.SEALED;
      case GAP -> faces;
    };
  }

  /** The line once all faces that lie together are welded, a jacket round it. */
  SectionLine welded(Optional<Strip> sheet) {
    Strip whole = parts.get(0);
    for (Strip next : parts.subList(1, parts.size())) {
      whole = isTold(whole, next) ? whole.weldedTo(next, joins) : whole.followedBy(next);
    }
    if (near == End.GAP && far == End.GAP) {
      whole = TileLoop.of(whole, joins);
    } else if (near == End.GAP) {
      whole = whole.withSeam(0, joins);
    } else if (far == End.GAP) {
      whole = whole.withSeam(whole.cells(), joins);
    }
    if (near == End.OUTSIDE && sheet.isPresent()) {
      whole = sheet.get().followedBy(whole);
      whole = isHalf() ? whole : whole.followedBy(sheet.get().reversed());
    }
    return new SectionLine(
        kind,
        normal,
        share,
        List.of(whole),
        near == End.GAP ? End.MIRROR : near,
        far == End.GAP ? End.MIRROR : far,
        joins);
  }

  /** Boundaries of unlike layers are told by the lines of neighboring layers, which are finer. */
  private boolean isTold(Strip before, Strip next) {
    return kind == Kind.LAYERS
        || joins.kind() != SeamName.Kind.LAYERS
        || before.metal(before.cells() - 1).equals(next.metal(0));
  }

  /**
   * The outer layers of many welded to each other and to the mean of the rest, down to the middle.
   * Their seams are among those of all layers, which have lines of their own.
   */
  SectionLine endingIn(Strip rest) {
    Strip whole = parts.stream().reduce(Strip::followedBy).orElseThrow().followedBy(rest);
    return new SectionLine(kind, normal, share, List.of(whole), near, End.MIRROR, joins);
  }

  /** Scale knocked off the outer faces by a blow. */
  SectionLine descaled() {
    return with(parts.stream().map(Strip::descaled).toList());
  }

  /** Drawn, pressed or rolled. */
  SectionLine stretched(Stretch f, BiFunction<Strip, Double, Strip> scaled) {
    double thinning = normal.thinning(f);
    return new SectionLine(
        kind,
        normal.stretched(f),
        share,
        parts.stream().map(p -> scaled.apply(p, thinning)).toList(),
        near,
        far,
        joins);
  }

  /** A depth ground off each outer face. */
  SectionLine ground(double depthMetres, Resolution resolution) {
    Strip left = groundNear(strip(), depthMetres, resolution);
    return with(
        List.of(isHalf() ? left : groundNear(left.reversed(), depthMetres, resolution).reversed()));
  }

  private Strip groundNear(Strip strip, double depthMetres, Resolution resolution) {
    Strip left = depthMetres > 0 ? strip.ground(depthMetres) : strip.descaled();
    return Regrid.nearZone(left, resolution::zone, !isHalf());
  }

  /** The same metal on a fresh grid, its scale off: a piece about to be laid against others. */
  SectionLine fresh(Resolution resolution) {
    return with(List.of(Regrid.allZones(strip().descaled(), resolution::zone, !isHalf())));
  }

  /**
   * Thickness of the thinnest of its inner layers, m; infinite where it has none. What the fire and
   * the grinder left of an outer one says nothing of how thick they are; of one beside their mean
   * there is half.
   */
  double thinnestLayerMetres(Metal mean) {
    Strip strip = strip();
    double thinnest = Double.POSITIVE_INFINITY;
    int from = -1;
    for (int i = 1; i < strip.cells(); i++) {
      if (!strip.metal(i).equals(strip.metal(i - 1))) {
        if (from >= 0) {
          boolean half = strip.metal(from - 1).equals(mean) || strip.metal(i).equals(mean);
          thinnest = Math.min(thinnest, (half ? 2 : 1) * strip.metres(from, i));
        }
        from = i;
      }
    }
    boolean middle = from >= 0 && isHalf();
    return middle ? Math.min(thinnest, 2 * strip.metres(from, strip.cells())) : thinnest;
  }

  /** The same with the mean of its layers for each of them. */
  SectionLine averaged(Metal mean) {
    return with(List.of(MeanSteel.of(strip(), mean)));
  }

  /** The whole line, from end to end. */
  Strip whole() {
    return isHalf() ? strip().mirrored() : strip();
  }

  /** The same line met from its other end. */
  SectionLine reversed() {
    return isHalf() ? this : with(List.of(strip().reversed()));
  }
}
