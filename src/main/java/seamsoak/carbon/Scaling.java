package seamsoak.carbon;

import seamsoak.heat.HeatCurve;

/** Scale growing at one edge of a strip, and the metal that it eats. */
final class Scaling {
  private final Edge edge;
  private final Surroundings surroundings;
  private double factor = 1;
  private double eaten;
  private double scaled;
  private double metalLost;

  /**
   * @param scaledMetres metal that the scale there now has eaten
   */
  Scaling(Edge edge, Surroundings surroundings, double scaledMetres) {
    this.edge = edge;
    this.surroundings = surroundings;
    this.scaled = scaledMetres;
  }

  Edge edge() {
    return edge;
  }

  boolean sealed() {
    return edge.share() == 0;
  }

  /** Metal eaten since the strip was last taken up, m. */
  double eaten() {
    return eaten;
  }

  /** Metal that the scale there now has eaten, m. */
  double scaled() {
    return scaled;
  }

  /** Metal lost in this heat, m. */
  double metalLost() {
    return metalLost;
  }

  /** The strip is taken up, with that metal at the edge. */
  void startAnew(Metal metal) {
    eaten = 0;
    factor = edge.stillAir() ? surroundings.stillAir().scaling(metal) : 1;
  }

  /** Metal that scale eats in a step, m: the increment of X^2 is 2 k_c dt. */
  double eatenIn(HeatCurve.Segment segment, double t, double step) {
    if (sealed()) {
      return 0;
    }
    double a = perSecond(segment, t);
    double b = perSecond(segment, t + step / 2);
    double c = perSecond(segment, t + step);
    double square = scaled * scaled + 2 * step * (a + 4 * b + c) / 6;
    return Math.sqrt(square) - scaled;
  }

  private double perSecond(HeatCurve.Segment segment, double t) {
    return factor * edge.share() * surroundings.scaling().applyAsDouble(segment.kelvinAt(t));
  }

  void eats(double metres) {
    eaten += metres;
    takes(metres);
  }

  /** Metal that goes at once, with the last of its zone. */
  void takes(double metres) {
    metalLost += metres;
    scaled += metres;
  }
}
