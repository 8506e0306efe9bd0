package seamsoak.state;

import seamsoak.billet.Tiles;
import seamsoak.billet.Workpiece;

/**
 * The bar that would have left the pattern's cells square at the end, as wide as it was.
 *
 * @param thicknessMm of the bar before the bias cut
 * @param widthMm of the bar before the bias cut
 * @param barLengthMm bar needed for that many tiles
 * @param tiles how many tiles
 * @param aspectNow length over width of the cells as it is
 */
public record Preform(
    double thicknessMm, double widthMm, double barLengthMm, int tiles, double aspectNow) {

  /** For a billet made of tiles, as it stands at the end. */
  public static Preform of(Workpiece end, Tiles tiles) {
    Tiles.Bar bar = tiles.bar();
    double aspect = end.cellAspect();
    double t = bar.size().thicknessMetres();
    double w = bar.size().widthMetres();
    // at the end a cell is as long as the bar was thick times what later steps do to it, whether
    // they stretch the width by a factor or draw it to a size
    double thickness = t / aspect;
    double length = thickness / Math.tan(bar.radians()) + tiles.count() * bar.pitchMetres();
    return new Preform(
        thickness * 1e3, w * 1e3, (length - bar.kerfMetres()) * 1e3, tiles.count(), aspect);
  }
}
