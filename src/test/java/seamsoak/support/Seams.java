package seamsoak.support;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import seamsoak.billet.Direction;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Eye;
import seamsoak.carbon.Line;
import seamsoak.carbon.LineVisibility;
import seamsoak.carbon.Plane;

/** The seams of a billet, as tests ask for them. */
public final class Seams {
  private Seams() {}

  /** A seam on a line. */
  public record Place(SectionLine line, Plane plane) {
    public Line carbon() {
      return Line.of(line.strip(), plane);
    }

    double contrast(Direction shownFace, LineVisibility visibility) {
      double trace = line.trace(shownFace);
      return Double.isFinite(trace)
          ? new Eye(line.strip(), plane, trace, visibility).on(line.strip()).over(visibility)
          : 0;
    }
  }

  /** All that one step made. */
  public static List<Place> madeIn(Workpiece piece, int step) {
    return piece
        .lines()
        .filter(SectionLine::isWelded)
        .flatMap(l -> l.strip().planes().stream().map(p -> new Place(l, p)))
        .filter(p -> p.plane().name().step() == step)
        .toList();
  }

  /** On lines of one kind. */
  public static Stream<Place> on(Workpiece piece, SectionLine.Kind kind, int step) {
    return madeIn(piece, step).stream().filter(p -> p.line().kind() == kind);
  }

  /** The one that lacks most. */
  public static Place deepest(Workpiece piece, int step) {
    return madeIn(piece, step).stream()
        .max(Comparator.comparingDouble(p -> p.carbon().depthPct()))
        .orElseThrow();
  }

  public static boolean shows(Stage stage, int step) {
    Workpiece piece = stage.piece();
    return madeIn(piece, step).stream()
        .anyMatch(p -> p.contrast(piece.shownFace(), LineVisibility.USUAL) >= 1);
  }
}
