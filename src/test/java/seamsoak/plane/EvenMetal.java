package seamsoak.plane;

/** A metal for closed forms: activity is the carbon itself, one diffusivity, m2/s. */
record EvenMetal(double startRatio, double squareMetresPerSecond) implements PlaneMetal {
  @Override
  public double percent(double ratio) {
    return ratio;
  }

  @Override
  public PlaneMetal.Isotherm at(double kelvin) {
    return new Isotherm(1 / (2 * squareMetresPerSecond));
  }

  private record Isotherm(double half) implements PlaneMetal.Isotherm {
    @Override
    public double activity(double ratio) {
      return ratio;
    }

    @Override
    public double ratioAt(double activity) {
      return activity;
    }

    @Override
    public void put(double y, int cell, double[] activity, double[] slope, double[] halfMetre) {
      activity[cell] = y;
      slope[cell] = 1;
      halfMetre[cell] = half;
    }
  }
}
