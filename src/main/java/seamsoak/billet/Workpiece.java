package seamsoak.billet;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import seamsoak.billet.SectionLine.End;
import seamsoak.billet.SectionLine.Kind;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.Zones;
import seamsoak.heat.HeatCurve;

/**
 * A billet between two operations: its size and the lines that stand for all of its metal.
 * Immutable; each operation gives the next one.
 *
 * @param size outer size, jacket included
 * @param body the mean of all its steels by share
 * @param thickness the line from face to face
 * @param width the line from side to side
 * @param inner lines inside that meet no outer face: across the tiles, across the layers
 * @param loose what lies around or in it and is on no line yet
 * @param jacket the jacket's metal while there is one
 * @param tiles the tiles it was made of, if it was
 */
public record Workpiece(
    Size size,
    Metal body,
    SectionLine thickness,
    SectionLine width,
    List<SectionLine> inner,
    Loose loose,
    Optional<Metal> jacket,
    Optional<Tiles> tiles) {

  public Workpiece {
    inner = List.copyOf(inner);
  }

  /** What a heat does. */
  public record Heated(Workpiece piece, double thicknessLoss, double worstMassError) {}

  public boolean hasLooseFaces() {
    return lines().anyMatch(l -> l.parts().size() > 1 || l.near() == End.GAP || l.far() == End.GAP)
        || !(loose instanceof Loose.Nothing);
  }

  /** All its lines. */
  public Stream<SectionLine> lines() {
    return Stream.concat(Stream.of(thickness, width), inner.stream());
  }

  /** What is under each outer face, from the face inward to the middle. */
  public Stream<Strip> skins() {
    return Stream.of(thickness, width).flatMap(l -> l.skins().stream());
  }

  /** The face on which the pattern is looked at: the cut end, or the top once tiles are laid. */
  public Direction shownFace() {
    return tiles.isPresent() ? Direction.THICKNESS : Direction.LENGTH;
  }

  /** Length over width of the pattern's cell as it is looked at. */
  public double cellAspect() {
    return tiles
        .map(t -> t.lengthMetres() / t.widthMetres())
        .orElse(size.thicknessMetres() / size.widthMetres());
  }

  /**
   * One stay in the fire.
   *
   * @param outside edge of the outer faces
   * @param faces edge of faces that are not welded yet
   */
  public Heated heated(HeatCurve curve, Edge outside, Edge faces, StripSolver solver) {
    double diffused = body.diffused(curve);
    Furnace furnace = new Furnace(solver, curve);
    through(furnace::put, outside, faces);
    try {
      furnace.heat();
    } catch (IllegalArgumentException gone) {
      throw hasLooseFaces()
          ? new CannotBeDone(
              "a layer, piece or sheet is scaled away before it is welded",
              "weld with fewer or shorter heats, cover the faces, or take thicker stock")
          : gone;
    }
    // what was one strip stays one, so that the next heat has to be computed once
    Map<Strip, Strip> spread = new IdentityHashMap<>();
    Workpiece heated =
        through(
            (s, near, far) ->
                spread.computeIfAbsent(
                    furnace.becomes(s, near, far), after -> after.spread(diffused)),
            outside,
            faces);
    // a jacket that is not welded yet takes the fire for the face below it
    Strip outer = loose instanceof Loose.Jacket j ? j.sheet() : thickness.parts().get(0);
    double lost = furnace.lostAtNear(outer, outside);
    return new Heated(heated.measured(lost, this), lost, furnace.worstMassError());
  }

  /** Every strip of it, each with its edges: the only place that lists them. */
  private Workpiece through(SectionLine.Fire fire, Edge outside, Edge faces) {
    Edge skins = loose instanceof Loose.Jacket ? faces : outside;
    UnaryOperator<SectionLine> heat = l -> l.heated(fire, skins, faces);
    Loose next = loose;
    if (loose instanceof Loose.Jacket j) {
      next = new Loose.Jacket(fire.through(j.sheet(), outside, Edge.SEALED));
    } else if (loose instanceof Loose.Layers l) {
      next =
          l.withHalves(l.halves().stream().map(h -> fire.through(h, faces, Edge.SEALED)).toList());
    }
    return withLines(heat, next);
  }

  /** Its size by what is left of its lines; its ends lose what its faces do. */
  private Workpiece measured(double endLoss, Workpiece before) {
    double sheet = loose instanceof Loose.Jacket j ? 2 * j.sheet().metres() : 0;
    double length = size.lengthMetres() - 2 * endLoss;
    if (tiles.isPresent()) {
      for (int i = 0; i < inner.size(); i++) {
        SectionLine was = before.inner.get(i);
        if (was.kind() == Kind.TILE && was.near() == End.GAP) {
          double perSeam = was.metres() - inner.get(i).metres();
          length -= (tiles.get().count() - 1) * perSeam / was.normal().length();
        }
      }
    }
    return withSize(new Size(length, width.metres() + sheet, thickness.metres() + sheet));
  }

  /** Everything that lies together welded. */
  Workpiece welded() {
    Optional<Strip> sheet =
        loose instanceof Loose.Jacket j ? Optional.of(j.sheet()) : Optional.empty();
    Workpiece whole = withLines(l -> l.welded(sheet), new Loose.Nothing());
    return loose instanceof Loose.Layers l ? whole.likeLayers(l, thickness) : whole;
  }

  /**
   * The body has the carbon that its layers have: what they lost at their faces before the weld,
   * the lines that do not run through each of them lose alike (carbon where two losses meet is the
   * product of both over the core's).
   */
  private Workpiece likeLayers(Loose.Layers layers, SectionLine before) {
    SectionLine across = layers.restNow(body).map(before::endingIn).orElse(thickness);
    SectionLine along = width.with(List.of(width.strip().enriched(layers.carbonLeft(body))));
    return withSkins(across, along).withSize(size.withThickness(across.metres()));
  }

  /** Scale knocked off by a blow. */
  Workpiece descaled() {
    return withSkins(thickness.descaled(), width.descaled());
  }

  /** Drawn thinner by a factor at constant width. */
  public Workpiece drawnThinner(double factor) {
    return stretched(Stretch.ofSection(1, factor));
  }

  /** Drawn, pressed or rolled. */
  Workpiece stretched(Stretch f) {
    Map<Strip, Map<Double, Strip>> done = new IdentityHashMap<>();
    BiFunction<Strip, Double, Strip> scaled =
        (strip, factor) ->
            done.computeIfAbsent(strip, s -> new HashMap<>())
                .computeIfAbsent(factor, strip::scaled);
    return new Workpiece(
        size.stretched(f),
        body,
        thickness.stretched(f, scaled).descaled(),
        width.stretched(f, scaled).descaled(),
        inner.stream().map(l -> l.stretched(f, scaled)).toList(),
        loose,
        jacket,
        tiles.map(t -> t.stretched(f)));
  }

  /**
   * A depth ground off every outer face.
   *
   * @throws IllegalArgumentException when there is not that much metal
   */
  Workpiece ground(double depthMetres, Resolution resolution) {
    return less(depthMetres, depthMetres, depthMetres, resolution);
  }

  /** Ground and cut to a section inside this one, its length kept. */
  public Workpiece shaped(double thicknessMetres, double widthMetres, Resolution resolution) {
    double across = (size.thicknessMetres() - thicknessMetres) / 2;
    double along = (size.widthMetres() - widthMetres) / 2;
    if (!(across >= 0 && along >= 0 && thicknessMetres > 0 && widthMetres > 0)) {
      throw new CannotBeDone("the billet does not hold such a section", "ask for a smaller one");
    }
    return less(0, along, across, resolution);
  }

  /** The jacket and a depth below it taken off. */
  Workpiece unjacketed(double depthMetres, Resolution resolution) {
    double across = jacketMetres(thickness) + depthMetres;
    double along = jacketMetres(width) + depthMetres;
    Workpiece left = less(across, along, across, resolution);
    return new Workpiece(
        left.size, body, left.thickness, left.width, inner, loose, Optional.empty(), tiles);
  }

  private Workpiece less(double length, double along, double across, Resolution resolution) {
    Size left = size.less(length, along, across);
    if (left.gone()) {
      throw new CannotBeDone("the billet is not that thick", "take less off");
    }
    return withSkins(
            across > 0 ? thickness.ground(across, resolution) : thickness,
            along > 0 ? width.ground(along, resolution) : width)
        .withSize(left);
  }

  /** Its size without a jacket; at the ends as it is. */
  public Size bodySize() {
    boolean around = loose instanceof Loose.Jacket;
    double sheet = loose instanceof Loose.Jacket j ? j.sheet().metres() : 0;
    return size.less(
        0, around ? sheet : jacketMetres(width), around ? sheet : jacketMetres(thickness));
  }

  /** Thickness of jacket left at the end of a line, m. */
  public double jacketMetres(SectionLine line) {
    return jacketMetres(line.parts().get(0));
  }

  /** Thickness of jacket left at the near edge of a strip, m. */
  public double jacketMetres(Strip skin) {
    double sum = 0;
    for (int i = 0; jacket.isPresent() && i < skin.cells(); i++) {
      if (!skin.metal(i).equals(jacket.get())) {
        break;
      }
      sum += skin.metres(i);
    }
    return sum;
  }

  /** Carbon per metal atom of the body far from every seam and face. */
  public double coreRatio() {
    double longest = 0;
    double ratio = body.startRatio();
    for (SectionLine line : List.of(width, thickness)) {
      Strip strip = line.parts().get(0);
      int[] zones = Zones.of(strip);
      for (int z = 0; z + 1 < zones.length; z++) {
        Strip zone = strip.part(zones[z], zones[z + 1]);
        // half a line may end in the middle of its last zone
        boolean half = z + 2 == zones.length && line.endsInMetal();
        double metres = half ? 2 * zone.metres() : zone.metres();
        if (zone.metal(0).equals(body) && metres > longest) {
          longest = metres;
          ratio = zone.ratio(half ? zone.cells() - 1 : zone.middleCell());
        }
      }
    }
    return ratio;
  }

  private Workpiece withLines(UnaryOperator<SectionLine> change, Loose next) {
    return new Workpiece(
        size,
        body,
        change.apply(thickness),
        change.apply(width),
        inner.stream().map(change).toList(),
        next,
        jacket,
        tiles);
  }

  /** The same piece with other lines inside. */
  public Workpiece withInner(UnaryOperator<List<SectionLine>> change) {
    return new Workpiece(size, body, thickness, width, change.apply(inner), loose, jacket, tiles);
  }

  Workpiece withSize(Size next) {
    return new Workpiece(next, body, thickness, width, inner, loose, jacket, tiles);
  }

  Workpiece withSkins(SectionLine across, SectionLine along) {
    return new Workpiece(size, body, across, along, inner, loose, jacket, tiles);
  }
}
