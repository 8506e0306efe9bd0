package seamsoak.carbon.second;

/** Unknowns in a row whose rates depend on nothing but themselves and their two neighbors. */
interface Chain {
  int size();

  /** Rates of change at a time. */
  void rates(double time, double[] y, double[] rate);

  /** Size below which an unknown need not be known to its relative tolerance. */
  double small(int i);
}
