package seamsoak.carbon.problem;

import seamsoak.carbon.Grid;
import seamsoak.carbon.Strip;

/**
 * Two thick pieces of unlike metals welded: activity g1 y and g2 y, so that carbon jumps by {@code
 * K = y1i/y2i = g2/g1} at the seam, where it stays at {@code y2i = (y1 sqrt D1 + y2 sqrt D2)/(K
 * sqrt D1 + sqrt D2)}; on either side {@code y = yj + (yji - yj) erfc(|x|/(2 sqrt(Dj t)))} (Carslaw
 * and Jaeger; from memory).
 */
public record PartitionCouple(
    double diffusivity1,
    double diffusivity2,
    double start1,
    double start2,
    double partition,
    double seconds)
    implements Problem {
  private double half() {
    return 10 * Math.sqrt(Math.max(diffusivity1, diffusivity2) * seconds);
  }

  @Override
  public Strip solved(double relativeTolerance) {
    Grid grid = new Grid(1e-4, 1.03, false);
    Strip first = Strip.of(PhaseLaw.single(diffusivity1, 1).metal("first", start1), half(), grid);
    Strip second =
        Strip.of(PhaseLaw.single(diffusivity2, partition).metal("second", start2), half(), grid);
    return Problem.sealed(first.weldedTo(second), seconds, relativeTolerance);
  }

  public double exactSecondAtSeam() {
    double r1 = Math.sqrt(diffusivity1);
    double r2 = Math.sqrt(diffusivity2);
    return (start1 * r1 + start2 * r2) / (partition * r1 + r2);
  }

  public double exactFirstAtSeam() {
    return partition * exactSecondAtSeam();
  }

  @Override
  public double exact(double metres) {
    double x = metres - half();
    boolean first = x < 0;
    double d = first ? diffusivity1 : diffusivity2;
    double start = first ? start1 : start2;
    double seam = first ? exactFirstAtSeam() : exactSecondAtSeam();
    return start + (seam - start) * Erf.erfc(Math.abs(x) / (2 * Math.sqrt(d * seconds)));
  }

  @Override
  public double allowed() {
    return 5e-4 * Math.abs(start2 - exactSecondAtSeam());
  }
}
