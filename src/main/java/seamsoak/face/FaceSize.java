package seamsoak.face;

/**
 * How much of a face a picture shows, and to what scale.
 *
 * @param across pixels from left to right
 * @param up pixels from top to bottom
 * @param mmPerPixel one of a few even numbers, so that it can be laid beside a photograph
 */
public record FaceSize(int across, int up, double mmPerPixel) {
  private static final double[] SCALES = {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1};

  /** Of a long bar so many times its width is shown, unless a blade is longer; judgement. */
  private static final double LONG = 3;

  /** As large as a screen shows. */
  private static final int WIDE = 1600;

  private static final int HIGH = 1200;

  /**
   * The middle of a face, as fine as fits.
   *
   * @param leastMetres so much of its length is wanted, if it has that
   */
  public static FaceSize of(FaceField face, double leastMetres) {
    return of(face, leastMetres, WIDE, HIGH);
  }

  /** The same in so many pixels. */
  public static FaceSize of(FaceField face, double leastMetres, int mostAcross, int mostUp) {
    double wanted = Math.max(leastMetres, LONG * face.upMetres());
    double across =
        1e3 * (face.isPlan() ? Math.min(wanted, face.acrossMetres()) : face.acrossMetres());
    double up = 1e3 * face.upMetres();
    double scale = SCALES[SCALES.length - 1];
    for (int i = SCALES.length - 1; i >= 0; i--) {
      boolean fits = across / SCALES[i] <= mostAcross && up / SCALES[i] <= mostUp;
      scale = fits ? SCALES[i] : scale;
    }
    return new FaceSize(pixels(across, scale, mostAcross), pixels(up, scale, mostUp), scale);
  }

  private static int pixels(double mm, double scale, int most) {
    return (int) Math.max(1, Math.min(most, Math.floor(mm / scale)));
  }

  /** Shown from left to right, mm. */
  public double acrossMm() {
    return across * mmPerPixel;
  }

  /** Shown from top to bottom, mm. */
  public double upMm() {
    return up * mmPerPixel;
  }

  /** Pixels to a metre, as files tell it. */
  public int perMetre() {
    return (int) Math.round(1e3 / mmPerPixel);
  }
}
