package seamsoak.bench;


import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import seamsoak.carbon.CarbonInSteel;
import seamsoak.carbon.CarbonLaw;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Metal;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.carbon.Surroundings;
import seamsoak.data.DataFolder;
import seamsoak.heat.HeatCurve;
import seamsoak.property.Correlations;
import seamsoak.property.phase.Agren1986Mobility;
import seamsoak.property.phase.AusteniteActivity;
import seamsoak.steel.Composition;
import seamsoak.steel.Element;










/**
 * Writes the two problems of {@link StripBench} as plain numbers, for solvers in other languages,
 * and how this solver does on them: one line for each tolerance, with the time that one heat takes
 * a warm machine, the memory it takes, and the carbon it ends with. Held at one temperature,
 * without scale, so that all solve the same equations.
 *
 * @param name such as smooth-100
 * @param strip at the start
 * @param edge of its near face
 * @param kelvin of the hold
 * @param seconds of the hold
 */
public record Peers(String name, Strip strip, Edge edge, double kelvin, double seconds) {
  private static final double[] TOLERANCES = {1e-2, 5e-3, 3e-3, 2e-3, 1e-3, 3e-4, 1e-4, 1e-5};
  private static final double ENOUGH_SECONDS = 1;

  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    Correlations k = Correlations.load(DataFolder.packed());
    List<String> lines = new ArrayList<>();
    for (int n : new int[] {100, 200, 400}) {
      Metal high = metal(k, 0.95);
      Metal low = metal(k, 0.2);
      Strip couple = even(high, 0.5e-3, n / 2).weldedTo(even(low, 0.5e-3, n / 2));
      new Peers("smooth-" + n, couple, Edge.SEALED, 1373.15, 1200).all(k, folder, lines);
      Strip bare = even(metal(k, 0.77), 1e-3, n);
      new Peers("plateau-" + n, bare, Edge.OPEN, 1073.15, 3600).all(k, folder, lines);
    }
    Files.write(folder.resolve("seamsoak.txt"), lines);
  }

  private static Metal metal(Correlations k, double carbon) {
    return Metal.of(
        k, "C" + carbon, Composition.of(Map.of(Element.C, carbon, Element.MN, carbon / 2)), 1);
  }

  private static Strip even(Metal metal, double metres, int n) {
    double[] thickness = new double[n];
    double[] ratio = new double[n];
    Arrays.fill(thickness, metres / n);
    Arrays.fill(ratio, metal.startRatio());
    return Strip.of(metal, thickness, ratio);
  }

  private void all(Correlations k, Path folder, List<String> lines) throws IOException {
    Files.writeString(folder.resolve(name + ".txt"), numbers(k));
    for (double tolerance : TOLERANCES) {
      StripSolver solver =
          new StripSolver(
              new Surroundings(t -> Math.exp(k.phases().scaledSurface().lnActivity(t, 1)), t -> 0),
              tolerance);
      lines.add(measured(solver, tolerance));
    }
  }

  private String measured(StripSolver solver, double tolerance) {
    HeatCurve hold = HeatCurve.hold(kelvin, seconds);
    var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    double best = Double.POSITIVE_INFINITY;
    long bytes = 0;
    Strip end = strip;
    double spent = 0;
    while (spent < ENOUGH_SECONDS) {
      long cpu = threads.getCurrentThreadCpuTime();
      long allocated = threads.getCurrentThreadAllocatedBytes();
      end = solver.advance(strip, hold, edge).strip();
      bytes = threads.getCurrentThreadAllocatedBytes() - allocated;
      double took = (threads.getCurrentThreadCpuTime() - cpu) * 1e-9;
      best = Math.min(best, took);
      spent += took;
    }
    StringBuilder line = new StringBuilder();
    line.append(
        String.format(Locale.ROOT, "%s %g %.9g %d", name, tolerance, best, bytes));
    for (int i = 0; i < end.cells(); i++) {
      line.append(' ').append(end.ratio(i));
    }
    return line.toString();
  }

  /** Cells, time, edge and seam; then each metal's law; then thickness, metal and carbon by cell. */
  private String numbers(Correlations k) {
    StringBuilder all = new StringBuilder();
    CarbonLaw.Isotherm face = strip.metal(0).law().at(kelvin);
    double outside = Math.exp(k.phases().scaledSurface().lnActivity(kelvin, 1));
    all.append(
        String.format(
            Locale.ROOT,
            "%d %s %s %d%n",
            strip.cells(),
            seconds,
            edge.share() > 0 ? face.ratioAt(outside) : -1.0,
            strip.seam()));
    law(k, strip.metal(0), all);
    law(k, strip.metal(strip.cells() - 1), all);
    for (int i = 0; i < strip.cells(); i++) {
      all.append(strip.metres(i)).append(' ').append(strip.ratio(i)).append('\n');
    }
    return all.toString();
  }

  private void law(Correlations k, Metal metal, StringBuilder all) {
    CarbonInSteel law = (CarbonInSteel) metal.law();
    AusteniteActivity.Isotherm a = new AusteniteActivity(k.phases().activity(), law.lattice()).at(kelvin);
    Agren1986Mobility b = k.phases().mobility();
    double celsius = kelvin - 273.15;
    double least = law.lattice().ratio(law.phases().orElseThrow().austeniteBesideFerritePct(celsius));
    double most = law.lattice().ratio(law.phases().orElseThrow().austeniteBesideCementitePct(celsius));
    CarbonLaw.Isotherm at = law.at(kelvin);
    double ferriteMost = least > 0 ? at.ratioAt(at.activity(0.99 * least)) : 0;
    double ferrite = k.phases().ferriteDiffusivity().squareMetresPerSecond(kelvin);
    for (double v :
        new double[] {
          b.dilute(kelvin), b.exponent(kelvin), a.c0(), a.c1(), a.c2(), ferrite, ferriteMost, least, most
        }) {
      all.append(v).append(' ');
    }
    all.append('\n');
  }
}
