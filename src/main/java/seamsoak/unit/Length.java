package seamsoak.unit;

/** To be completed: parse and format. */
public record Length(double metres) {
  public static Length ofMillimetres(double millimetres) {
    return new Length(millimetres / 1000);
  }

  public double millimetres() {
    return metres * 1000;
  }

  public double inches() {
    return metres / 0.0254;
  }
}
