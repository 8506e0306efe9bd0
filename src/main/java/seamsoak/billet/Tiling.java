package seamsoak.billet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import seamsoak.carbon.Metal;
import seamsoak.carbon.SeamName;
import seamsoak.carbon.Strip;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/**
 * A bar cut on the bias, the slices laid flat in a row with the cut face up, in a jacket or bare.
 *
 * @param radians angle between the cut and the bar's length
 * @param sliceMetres thickness of a slice, square to the cut
 * @param kerfMetres lost in each cut, along the bar
 * @param groundMetres ground off each face that meets another
 * @param count tiles wanted, all that the bar gives when empty
 * @param jacket sheet round them, if any
 * @param jacketMetres its thickness
 * @param units that a refusal is told in
 */
record Tiling(
    double radians,
    double sliceMetres,
    double kerfMetres,
    double groundMetres,
    OptionalInt count,
    Optional<Metal> jacket,
    double jacketMetres,
    UnitSystem units) {

  /**
   * The row of tiles, its faces loose.
   *
   * @throws IllegalArgumentException with a sentence when it cannot be done
   */
  Workpiece of(Workpiece bar, int step, Resolution resolution) {
    Tiles.Bar cut = new Tiles.Bar(bar.size(), radians, sliceMetres, kerfMetres, groundMetres);
    int most = cut.mostTiles();
    int tiles = count.orElse(most);
    if (most < 1 || tiles > most) {
      throw new CannotBeDone(
          "a bar "
              + new Length(bar.size().lengthMetres()).format(units)
              + " long gives "
              + most
              + " tiles, and "
              + Math.max(1, tiles)
              + " need "
              + new Length(cut.lengthForMetres(Math.max(1, tiles))).format(units),
          "ask for fewer tiles or thinner slices, or draw it longer before");
    }
    if (cut.tileLengthMetres() <= 0) {
      throw new CannotBeDone(
          "the faces cannot be ground that deep", "grind less, or cut thicker slices");
    }
    boolean joined = tiles > 1;
    Direction normal = new Direction(Math.sin(radians), 0, Math.cos(radians));
    SectionLine up = bar.thickness().fresh(resolution);
    SectionLine cutUp = groundMetres > 0 ? up.ground(groundMetres, resolution) : up;
    SectionLine across =
        new SectionLine(
            SectionLine.Kind.TILE,
            normal,
            1,
            cutUp.parts(),
            joined ? SectionLine.End.GAP : SectionLine.End.MIRROR,
            joined && !cutUp.isHalf() ? SectionLine.End.GAP : SectionLine.End.MIRROR,
            new SeamName(SeamName.Kind.TILES, step));
    List<SectionLine> inner = new ArrayList<>(List.of(across));
    bar.inner().forEach(l -> inner.add(l.with(l.normal().tiled(radians), l.share())));
    double sheet = jacket.isPresent() ? jacketMetres : 0;
    Size row =
        new Size(
            tiles * cut.tileLengthMetres() + 2 * sheet,
            bar.size().widthMetres() + 2 * sheet,
            sliceMetres + 2 * sheet);
    Loose loose =
        jacket
            .<Loose>map(
                m -> new Loose.Jacket(Strip.of(m, jacketMetres, resolution.oneEnd(jacketMetres))))
            .orElse(new Loose.Nothing());
    return new Workpiece(
        row,
        bar.body(),
        cutFace(bar, resolution),
        bar.width().fresh(resolution),
        inner,
        loose,
        jacket,
        Optional.of(new Tiles(cut.tileLengthMetres(), bar.size().widthMetres(), tiles, cut)));
  }

  /** From the cut face inward: the cut runs through the inside of the bar, far from its faces. */
  private SectionLine cutFace(Workpiece bar, Resolution resolution) {
    double[] cells = resolution.oneEnd(sliceMetres / 2).cells(sliceMetres / 2);
    double[] ratio = new double[cells.length];
    Arrays.fill(ratio, bar.coreRatio());
    return SectionLine.half(
        SectionLine.Kind.THICKNESS, Direction.THICKNESS, Strip.of(bar.body(), cells, ratio));
  }
}
