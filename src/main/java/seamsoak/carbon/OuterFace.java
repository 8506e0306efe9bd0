package seamsoak.carbon;

/**
 * Carbon that the fire holds at one edge of a strip.
 *
 * <p>A covered face, or one under compact scale, lies between the steel's own activity, at the
 * carbon it came with, and that under scale, by the share it is open. Measured from the cell at the
 * face instead it would depend on the grid.
 */
final class OuterFace {
  private final Edge edge;
  private final Metal metal;
  private final Surroundings surroundings;
  private double kelvin = Double.NaN;

  /** Carbon that the face would hold in its metal, and the potential there; NaN when sealed. */
  private double ratio = Double.NaN;

  private double potential;

  OuterFace(Edge edge, Metal metal, Surroundings surroundings) {
    this.edge = edge;
    this.metal = metal;
    this.surroundings = surroundings;
  }

  void settle(CarbonLaw.Isotherm law, double toKelvin) {
    if (edge.share() > 0 && toKelvin != kelvin) {
      kelvin = toKelvin;
      double own = law.activity(metal.startRatio());
      double scaled = surroundings.activity().applyAsDouble(kelvin);
      double open =
          edge.stillAir()
              ? edge.share() * surroundings.stillAir().open(metal, kelvin)
              : edge.share();
      double outside = scaled + (1 - open) * Math.max(0, own - scaled);
      // as much as the metal can have, whatever lies in it as carbide: nothing leaves it then
      boolean full = outside >= law.mostActivity();
      ratio = full ? Double.POSITIVE_INFINITY : law.ratioAt(outside);
      potential = full ? Double.NaN : law.potential(ratio);
    }
  }

  /** Whether carbon leaves a cell with that much; the fire never brings any. */
  boolean takesFrom(double cellRatio) {
    return cellRatio > ratio;
  }

  double ratio() {
    return ratio;
  }

  double potential() {
    return potential;
  }
}
