package seamsoak.billet;

/**
 * The tiles a billet was laid from, and how the bar was cut for them.
 *
 * @param lengthMetres of one tile in plan, m
 * @param widthMetres of one tile in plan, m
 * @param count how many were laid
 * @param bar the bar they were cut from
 */
public record Tiles(double lengthMetres, double widthMetres, int count, Bar bar) {
  /**
   * A bar cut on the bias.
   *
   * @param size of the bar before the first cut
   * @param radians angle between the cut and the bar's length
   * @param sliceMetres thickness of a slice, square to the cut
   * @param kerfMetres lost in each cut, along the bar
   * @param groundMetres ground off each face that meets another
   */
  public record Bar(
      Size size, double radians, double sliceMetres, double kerfMetres, double groundMetres) {
    /** Along the bar from one cut to the next, m. */
    public double pitchMetres() {
      return sliceMetres / Math.sin(radians) + kerfMetres;
    }

    /** Waste wedges at the two ends together, m along the bar. */
    public double wedgesMetres() {
      return size.thicknessMetres() / Math.tan(radians);
    }

    /** Bar needed for a number of tiles, m. */
    public double lengthForMetres(int tiles) {
      return wedgesMetres() + tiles * pitchMetres() - kerfMetres;
    }

    /** Tiles that the bar gives. */
    public int mostTiles() {
      double room = size.lengthMetres() - wedgesMetres() + kerfMetres;
      return (int) Math.max(0, Math.floor(room / pitchMetres() + 1e-9));
    }

    /** Length of one tile along the cut, its faces ground, m. */
    public double tileLengthMetres() {
      return (size.thicknessMetres() - 2 * groundMetres) / Math.sin(radians);
    }
  }

  Tiles stretched(Stretch f) {
    return new Tiles(lengthMetres * f.length(), widthMetres * f.width(), count, bar);
  }
}
