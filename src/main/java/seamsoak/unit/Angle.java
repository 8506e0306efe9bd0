package seamsoak.unit;

/** To be completed: parse and format. */
public record Angle(double radians) {
  public static Angle ofDegrees(double degrees) {
    return new Angle(Math.toRadians(degrees));
  }

  public double degrees() {
    return Math.toDegrees(radians);
  }
}
