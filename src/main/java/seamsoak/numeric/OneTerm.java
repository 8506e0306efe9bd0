package seamsoak.numeric;

/**
 * The slowest part of the answer to a sudden change of surroundings, for bodies with constant
 * properties.
 *
 * <p>theta = factor exp(-root^2 Fo) at the middle; plate: root tan root = Bi, factor = 4 sin root /
 * (2 root + sin 2 root); cylinder: root J1(root) = Bi J0(root), factor = 2 J1 / (root (J0^2 +
 * J1^2))
 *
 * <p>theta what is left of the difference to the surroundings, as a share of the whole change; Fo =
 * diffusivity times time over the square of half the thickness; Bi = film coefficient times half
 * the thickness over the conductivity.
 *
 * <p>H.S. Carslaw, J.C. Jaeger, Conduction of Heat in Solids; F.P. Incropera et al., Fundamentals
 * of Heat and Mass Transfer, ch. 5.
 *
 * <p>Range: Fo above 0.2, where the rest of the series is below 1 %.
 *
 * @param root first root
 * @param factor its coefficient
 */
public record OneTerm(double root, double factor) {
  private static final double FIRST_ROOT_OF_J0 = 2.404825557695773;
  private static final double CLOSE = 1e-14;

  /** Of a plate cooled on both faces. */
  public static OneTerm plate(double biot) {
    double z = Roots.between(x -> x * Math.sin(x) - biot * Math.cos(x), CLOSE, Math.PI / 2, CLOSE);
    return new OneTerm(z, 4 * Math.sin(z) / (2 * z + Math.sin(2 * z)));
  }

  /** Of a long round bar. */
  public static OneTerm cylinder(double biot) {
    double z =
        Roots.between(x -> x * Bessel.j1(x) - biot * Bessel.j0(x), CLOSE, FIRST_ROOT_OF_J0, CLOSE);
    double j0 = Bessel.j0(z);
    double j1 = Bessel.j1(z);
    return new OneTerm(z, 2 * j1 / (z * (j0 * j0 + j1 * j1)));
  }

  /** The Fo after which so much is left at the middle. */
  public double fourierAt(double left) {
    return Math.log(factor / left) / (root * root);
  }
}
