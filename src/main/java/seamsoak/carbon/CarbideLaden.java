package seamsoak.carbon;

/**
 * Carbon in austenitic stainless steel at one temperature, where most of what it takes up lies as
 * chromium carbide: only what is dissolved moves, so it moves as much more slowly as there is more
 * of it than dissolves.
 *
 * <p>J = -M(y) s/y da/dx for y above s, s what dissolves beside carbide
 *
 * <p>So has it the law of dispersed carbide (A. Engstrom, L. Hoglund, J. Agren, Metall. Mater.
 * Trans. A 25 (1994) 1127, from memory): the carbide lies still, carbon flows past it. The activity
 * stays that of the steel with all of its carbon in solution, which rises as it does where carbide
 * takes the chromium; that part is a stand-in and rough.
 *
 * @param steel as if all dissolved
 * @param dissolves carbon per metal atom that dissolves beside carbide
 */
record CarbideLaden(SteelIsotherm steel, double dissolves) implements CarbonLaw.Isotherm {
  private double moves(double y) {
    return y > dissolves ? dissolves / y : 1;
  }

  @Override
  public double potential(double y) {
    double top = Math.min(y, steel.austeniteMost());
    return top <= dissolves
        ? steel.potential(y)
        : steel.potential(dissolves)
            + dissolves * (steel.integralPerCarbon(top) - steel.integralPerCarbon(dissolves));
  }

  @Override
  public double potentialSlope(double y) {
    return moves(y) * steel.potentialSlope(y);
  }

  @Override
  public double mobility(double y) {
    return moves(y) * steel.mobility(y);
  }

  @Override
  public double activity(double y) {
    return steel.activity(y);
  }

  @Override
  public boolean stopAtBends(double[] from, double[] to, int first, int end) {
    return steel.stopAtBends(from, to, first, end);
  }

  @Override
  public double ratioAt(double activity) {
    return steel.ratioAt(activity);
  }

  @Override
  public double ratioNear(double activity, double guess) {
    return steel.ratioNear(activity, guess);
  }

  @Override
  public boolean isSmooth(double y) {
    return steel.isSmooth(y);
  }

  @Override
  public double lnActivity(double y) {
    return steel.lnActivity(y);
  }

  @Override
  public double lnActivitySlope(double y) {
    return steel.lnActivitySlope(y);
  }

  @Override
  public double mostActivity() {
    return steel.mostActivity();
  }
}
