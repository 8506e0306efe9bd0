package seamsoak.billet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;

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
 */
record Tiling(
    double radians,
    double sliceMetres,
    double kerfMetres,
    double groundMetres,
    OptionalInt count,
    Optional<Metal> jacket,
    double jacketMetres) {

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
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a bar %.0f mm long gives %d tiles, and %d need %.0f mm",
              bar.size().lengthMetres() * 1e3,
              most,
              Math.max(1, tiles),
              cut.lengthForMetres(Math.max(1, tiles)) * 1e3));
    }
    if (cut.tileLengthMetres() <= 0) {
      throw new IllegalArgumentException("the faces cannot be ground that deep");
    }
    Strip face = Workpiece.face(bar.thicknessSkin(), groundMetres, resolution);
    Direction normal = new Direction(Math.sin(radians), 0, Math.cos(radians));
    Joint joint =
        new Joint("tiles " + step, Family.Kind.SEAM, step, 1, tiles - 1, normal, face, face);
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
    Workpiece laid =
        bar.withFamilies(
                all -> all.stream().map(f -> f.withNormal(f.normal().tiled(radians))).toList())
            // the cut faces come from the bar's inside
            .withSkins(
                bar.inside(sliceMetres / 2, resolution),
                Workpiece.face(bar.widthSkin(), 0, resolution));
    return new Workpiece(
        row,
        laid.body(),
        laid.thicknessSkin(),
        laid.widthSkin(),
        laid.families(),
        tiles > 1 ? List.of(joint) : List.of(),
        loose,
        jacket,
        Optional.of(new Tiles(cut.tileLengthMetres(), bar.size().widthMetres(), tiles, cut)));
  }
}
