package seamsoak.billet;

/** How far a draw, press or roll stretches a billet along its three directions; volume is kept. */
public record Stretch(double length, double width, double thickness) {
  /** The stretch that gives the section these factors, the length following from the volume. */
  static Stretch ofSection(double width, double thickness) {
    return new Stretch(1 / (width * thickness), width, thickness);
  }

  /** The stretch that gives the thickness this factor and spreads equally in length and width. */
  static Stretch ofThickness(double thickness) {
    double spread = Math.sqrt(1 / thickness);
    return new Stretch(spread, spread, thickness);
  }
}
