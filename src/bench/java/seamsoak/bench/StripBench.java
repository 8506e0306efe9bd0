package seamsoak.bench;


import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.Surroundings;
import seamsoak.data.DataFolder;
import seamsoak.heat.HeatCurve;
import seamsoak.property.Correlations;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;










/** One heat of one strip: all austenite, and with a front between phases crossing the cells. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class StripBench {
  @Param({"100", "200", "400"})
  public int cells;

  private StripSolver solver;
  private Strip couple;
  private Strip bare;

  /** Even cells, so that only their number changes. */
  @Setup
  public void layOut() {
    Correlations k = Correlations.load(DataFolder.packed());
    solver =
        new StripSolver(
            new Surroundings(
                t -> Math.exp(k.phases().scaledSurface().lnActivity(t, 1)),
                k.forging().steelScaling()::squareMetresPerSecond),
            1e-3);
    couple = strip(k, 0.95, 0.5e-3, cells / 2).weldedTo(strip(k, 0.2, 0.5e-3, cells / 2));
    bare = strip(k, 0.77, 1e-3, cells);
  }

  private static Strip strip(Correlations k, double carbon, double metres, int n) {
    Composition steel = Composition.of(Map.of(Element.C, carbon, Element.MN, carbon / 2));
    Metal metal = Metal.of(k, "C" + carbon, steel, 1);
    double[] thickness = new double[n];
    double[] ratio = new double[n];
    Arrays.fill(thickness, metres / n);
    Arrays.fill(ratio, metal.startRatio());
    return Strip.of(metal, thickness, ratio);
  }

  @Benchmark
  public Strip smooth() {
    return solver.advance(couple, HeatCurve.hold(1373.15, 1200), Edge.SEALED).strip();
  }

  @Benchmark
  public Strip plateau() {
    return solver.advance(bare, HeatCurve.hold(1073.15, 3600), Edge.OPEN).strip();
  }
}
