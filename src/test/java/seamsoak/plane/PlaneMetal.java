package seamsoak.plane;

/** A metal as a place for carbon; carbon is counted per metal atom. */
interface PlaneMetal {
  /** Carbon that it comes with. */
  double startRatio();

  double percent(double ratio);

  Isotherm at(double kelvin);

  /** At one temperature. */
  interface Isotherm {
    double activity(double ratio);

    /** Carbon with that activity. */
    double ratioAt(double activity);

    /**
     * Writes for one cell its activity, the slope of that by carbon, and the resistance of half a
     * metre of this metal to a flux driven by activity, s/m.
     */
    void put(double ratio, int cell, double[] activity, double[] slope, double[] halfMetre);

    /** Diffusivity, m2/s. */
    default double diffusivity(double ratio) {
      double[] a = new double[1];
      double[] slope = new double[1];
      double[] half = new double[1];
      put(ratio, 0, a, slope, half);
      return slope[0] / (2 * half[0]);
    }
  }
}
