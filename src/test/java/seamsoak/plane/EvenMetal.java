package seamsoak.plane;

/** A metal for closed forms: activity is the carbon itself, one diffusivity, m2/s. */
record EvenMetal(double startRatio, double squareMetresPerSecond) implements PlaneMetal {
  @Override
  public double percent(double ratio) {
    return ratio;
  }

  @Override
  public PlaneMetal.At at(double kelvin) {
    return new At(1 / (2 * squareMetresPerSecond));
  }

  private record At(double half) implements PlaneMetal.At {
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
