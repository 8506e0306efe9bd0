package seamsoak.support;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Resolution;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Line;
import seamsoak.carbon.Plane;
import seamsoak.state.AsCooled;
import seamsoak.state.Etch;
import seamsoak.state.SeamPlace;

/** The seams of a billet, as tests ask for them. */
public final class Seams {
  private Seams() {}

  /** A seam on a line. */
  public record Place(SectionLine line, Plane plane) {
    public Line carbon() {
      return Line.of(line.strip(), plane);
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

  /** K of the line that shows most of those made in a step, etched as the stage has cooled. */
  public static double contrast(Billet billet, Stage stage, int step) {
    return contrast(billet, stage, step, 0.5);
  }

  /** The same at a place in the band of what is known of ferrite. */
  public static double contrast(Billet billet, Stage stage, int step, double place) {
    Etch etch = asCooled(billet).after(stage).at(place);
    return SeamPlace.of(stage.piece()).stream()
        .filter(p -> p.plane().name().step() == step)
        .mapToDouble(p -> p.contrast(etch))
        .max()
        .orElse(0);
  }

  public static AsCooled asCooled(Billet billet) {
    return AsCooled.of(
        new Shop(Walks.CORRELATIONS, Assumptions.USUAL, Resolution.FINE), billet.stack());
  }
}
