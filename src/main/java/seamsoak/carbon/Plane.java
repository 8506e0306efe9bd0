package seamsoak.carbon;

/**
 * A seam where it lies on a strip.
 *
 * @param face the face between cells at which it lies, counted from the near edge; 0 or the last
 *     one where the metal beyond is the mirror image of the strip
 * @param name which seam it is
 * @param spreadSquareMetres D t of carbon since the weld, times every later thinning squared, m2:
 *     no carbon line here can be narrower than {@link #narrowestMetres}
 */
public record Plane(int face, SeamName name, double spreadSquareMetres) {
  /** Full width at half depth of an instantaneous line, over sqrt(D t): 4 sqrt(ln 2). */
  private static final double WIDTH = 4 * Math.sqrt(Math.log(2));

  /** Least width of a line of missing carbon here by now, while no other seam is near, m. */
  public double narrowestMetres() {
    return WIDTH * Math.sqrt(spreadSquareMetres);
  }

  Plane at(int newFace) {
    return new Plane(newFace, name, spreadSquareMetres);
  }

  Plane withSpread(double squareMetres) {
    return new Plane(face, name, squareMetres);
  }
}
