package seamsoak.billet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Regrid;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.heat.HeatCurve;

/**
 * A billet between two operations: its size and the strips that stand for all of its metal.
 * Immutable; each operation gives the next one.
 *
 * @param size outer size, jacket included
 * @param body the mean of all its steels by share
 * @param thicknessSkin from the face across the thickness inward
 * @param widthSkin from the face across the width inward
 * @param families seams and layers inside
 * @param joints faces laid together, not welded yet
 * @param loose jacket or layers not welded yet
 * @param jacket the jacket's metal while there is one
 * @param tiles the tiles it was made of, if it was
 */
public record Workpiece(
    Size size,
    Metal body,
    Strip thicknessSkin,
    Strip widthSkin,
    List<Family> families,
    List<Joint> joints,
    Loose loose,
    Optional<Metal> jacket,
    Optional<Tiles> tiles) {

  /** Share of a skin that may go before its far end would show. */
  private static final double DEEP_SHARE = 0.5;

  public Workpiece {
    families = List.copyOf(families);
    joints = List.copyOf(joints);
  }

  /** What a heat does. */
  public record Heated(
      Workpiece piece, double thicknessLoss, double widthLoss, double worstMassError) {}

  public boolean hasLooseFaces() {
    return !joints.isEmpty() || !(loose instanceof Loose.Nothing);
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
    Furnace furnace = Furnace.of(this, curve, outside, faces, solver);
    double diffused = body.diffused(curve);
    List<Family> newFamilies = new ArrayList<>();
    for (Family f : families) {
      newFamilies.add(f.heated(furnace.through(f.strip(), Edge.SEALED).strip(), diffused));
    }
    List<Joint> newJoints = new ArrayList<>();
    Size left = size;
    for (Joint j : joints) {
      StripSolver.Advanced first = furnace.through(j.first(), faces);
      StripSolver.Advanced second = furnace.through(j.second(), faces);
      newJoints.add(j.withStrips(first.strip(), second.strip()));
      left = j.shrink(left, first.metalLost() + second.metalLost());
    }
    boolean jacketed = loose instanceof Loose.Jacket;
    StripSolver.Advanced across = furnace.through(thicknessSkin, jacketed ? faces : outside);
    StripSolver.Advanced along = furnace.through(widthSkin, jacketed ? faces : outside);
    Loose newLoose = loose;
    double thicknessLoss = across.metalLost();
    double widthLoss = along.metalLost();
    if (loose instanceof Loose.Jacket j) {
      StripSolver.Advanced sheet = furnace.through(j.sheet(), outside);
      newLoose = new Loose.Jacket(sheet.strip());
      thicknessLoss += sheet.metalLost();
      widthLoss += sheet.metalLost();
    } else if (loose instanceof Loose.Layers l) {
      newLoose =
          l.withHalves(l.halves().stream().map(h -> furnace.through(h, faces).strip()).toList());
    }
    Workpiece next =
        new Workpiece(
            left.less(thicknessLoss, widthLoss, thicknessLoss),
            body,
            across.strip(),
            along.strip(),
            newFamilies,
            newJoints,
            newLoose,
            jacket,
            tiles);
    return new Heated(next, thicknessLoss, widthLoss, furnace.worstMassError());
  }

  /** Everything that lies together welded. */
  Workpiece welded() {
    List<Family> all = new ArrayList<>(families);
    joints.forEach(j -> all.add(j.welded()));
    Strip across = thicknessSkin;
    Strip along = widthSkin;
    if (loose instanceof Loose.Jacket j) {
      across = thicknessSkin.under(j.sheet());
      along = widthSkin.under(j.sheet());
    } else if (loose instanceof Loose.Layers l) {
      across = l.welded(thicknessSkin);
    }
    return new Workpiece(
        size, body, across, along, all, List.of(), new Loose.Nothing(), jacket, tiles);
  }

  /** Scale knocked off by a blow. */
  Workpiece descaled() {
    return withSkins(thicknessSkin.descaled(), widthSkin.descaled());
  }

  /** Drawn thinner by a factor at constant width. */
  public Workpiece drawnThinner(double factor) {
    return stretched(Stretch.ofSection(1, factor));
  }

  /** Drawn, pressed or rolled. */
  Workpiece stretched(Stretch f) {
    Map<Strip, Map<Double, Strip>> done = new IdentityHashMap<>();
    List<Family> all = new ArrayList<>();
    for (Family family : families) {
      Strip thin =
          done.computeIfAbsent(family.strip(), s -> new HashMap<>())
              .computeIfAbsent(family.normal().thinning(f), family.strip()::scaled);
      all.add(family.stretched(f, thin));
    }
    return new Workpiece(
        size.stretched(f),
        body,
        thicknessSkin.scaled(f.thickness()).descaled(),
        widthSkin.scaled(f.width()).descaled(),
        all,
        joints,
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
    Size left = size.less(depthMetres, depthMetres, depthMetres);
    if (left.gone()) {
      throw new IllegalArgumentException("the billet is not that thick");
    }
    return withSkins(
            ground(thicknessSkin, depthMetres, size.thicknessMetres() / 2, resolution),
            ground(widthSkin, depthMetres, size.widthMetres() / 2, resolution))
        .withSize(left);
  }

  /** Ground and cut to a section inside this one, its length kept. */
  public Workpiece shaped(double thicknessMetres, double widthMetres, Resolution resolution) {
    double across = (size.thicknessMetres() - thicknessMetres) / 2;
    double along = (size.widthMetres() - widthMetres) / 2;
    if (!(across >= 0 && along >= 0 && thicknessMetres > 0 && widthMetres > 0)) {
      throw new IllegalArgumentException("the billet does not hold such a section");
    }
    return withSkins(
            across > 0
                ? ground(thicknessSkin, across, size.thicknessMetres() / 2, resolution)
                : thicknessSkin,
            along > 0 ? ground(widthSkin, along, size.widthMetres() / 2, resolution) : widthSkin)
        .withSize(new Size(size.lengthMetres(), widthMetres, thicknessMetres));
  }

  /** The jacket and a depth below it taken off. */
  Workpiece unjacketed(double depthMetres, Resolution resolution) {
    double sheetAcross = jacketMetres(thicknessSkin);
    double sheetAlong = jacketMetres(widthSkin);
    Size left =
        size.less(sheetAcross + depthMetres, sheetAlong + depthMetres, sheetAcross + depthMetres);
    if (left.gone()) {
      throw new IllegalArgumentException("the billet is not that thick");
    }
    return new Workpiece(
        left,
        body,
        ground(thicknessSkin, sheetAcross + depthMetres, size.thicknessMetres() / 2, resolution),
        ground(widthSkin, sheetAlong + depthMetres, size.widthMetres() / 2, resolution),
        families,
        joints,
        loose,
        Optional.empty(),
        tiles);
  }

  /** Thickness of jacket left on a skin, m. */
  public double jacketMetres(Strip skin) {
    if (jacket.isEmpty()) {
      return 0;
    }
    double sum = 0;
    for (int i = 0; i < skin.cells() && skin.metal(i).equals(jacket.get()); i++) {
      sum += skin.metres(i);
    }
    return sum;
  }

  private double insideRatio() {
    return Stream.of(widthSkin, thicknessSkin)
        .filter(s -> s.metal(s.cells() - 1).equals(body))
        .map(s -> s.ratio(s.cells() - 1))
        .findFirst()
        .orElse(body.startRatio());
  }

  /**
   * A skin ground by a depth. In a stack of pieces it ends at the middle of its own piece; where
   * most of that goes, it is followed to the middle of the billet.
   */
  private Strip ground(Strip skin, double depthMetres, double middle, Resolution resolution) {
    double below = middle - skin.metres();
    boolean deep = depthMetres > DEEP_SHARE * skin.metres() && below > resolution.finestMetres();
    return fresh(
        (deep ? skin.followedBy(inside(below, resolution)) : skin).ground(depthMetres), resolution);
  }

  /** Metal far from all faces: the mean steel with the carbon it has there. */
  Strip inside(double metres, Resolution resolution) {
    double[] cells = resolution.oneEnd(metres).cells(metres);
    double[] ratio = new double[cells.length];
    Arrays.fill(ratio, insideRatio());
    return Strip.of(body, cells, ratio);
  }

  private static Strip fresh(Strip skin, Resolution resolution) {
    double near = 0;
    for (int i = 0; i < skin.cells() && skin.metal(i).equals(skin.metal(0)); i++) {
      near += skin.metres(i);
    }
    return Regrid.nearLayer(skin, resolution.oneEnd(near));
  }

  /** A face as it is laid against another: ground by a depth, its cells cut anew. */
  static Strip face(Strip skin, double depthMetres, Resolution resolution) {
    return fresh(depthMetres > 0 ? skin.ground(depthMetres) : skin.descaled(), resolution);
  }

  /** The same piece with every family changed. */
  public Workpiece withFamilies(UnaryOperator<List<Family>> change) {
    return new Workpiece(
        size, body, thicknessSkin, widthSkin, change.apply(families), joints, loose, jacket, tiles);
  }

  Workpiece withSize(Size next) {
    return new Workpiece(
        next, body, thicknessSkin, widthSkin, families, joints, loose, jacket, tiles);
  }

  Workpiece withSkins(Strip across, Strip along) {
    return new Workpiece(size, body, across, along, families, joints, loose, jacket, tiles);
  }

  Workpiece withJoints(List<Joint> next, Loose nextLoose) {
    return new Workpiece(
        size, body, thicknessSkin, widthSkin, families, next, nextLoose, jacket, tiles);
  }
}
