package seamsoak.carbon;

/**
 * When a line shows after etching. Judgement, no source: settings of the billet.
 *
 * @param dipPct least dip that shows, wt%
 * @param faceMetres least width on the shown face that shows, m
 */
public record LineVisibility(double dipPct, double faceMetres) {
  /** 0.10 wt% over 0.10 mm. */
  public static final LineVisibility USUAL = new LineVisibility(0.10, 0.10e-3);

  /**
   * Whether a line shows.
   *
   * @param stretch width on the shown face over true width, at least 1
   */
  public boolean shows(Line line, double stretch) {
    return line.dipPct() >= dipPct && line.metres() * stretch >= faceMetres;
  }
}
