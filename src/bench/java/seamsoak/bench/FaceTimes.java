package seamsoak.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import seamsoak.billet.Billet;
import seamsoak.billet.Exposure;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Names;
import seamsoak.chart.GrayPng;
import seamsoak.data.DataFolder;
import seamsoak.face.FaceSize;
import seamsoak.plan.FaceAdvice;
import seamsoak.plan.PlanAdvisor;
import seamsoak.property.Correlations;
import seamsoak.safety.CautionTable;
import seamsoak.steel.SteelTable;

/**
 * What faces take, as lines of a table: by the clock and of the processor, cold and then the middle
 * of some more. Given billet files.
 */
final class FaceTimes {
  private static final int TIMES = 9;
  private static final OperatingSystemMXBean MACHINE =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  /** Seconds. */
  private record Took(double clock, double processor) {
    @Override
    public String toString() {
      return String.format(Locale.ROOT, "%.3f, %.3f", clock, processor);
    }
  }

  private FaceTimes() {}

  public static void main(String[] files) {
    DataFolder data = DataFolder.packed();
    Correlations correlations = Correlations.load(data);
    SteelTable steels = SteelTable.load(data);
    PlanAdvisor advisor = new PlanAdvisor(correlations, CautionTable.load(data), 1);
    System.out.println("| what | billet | first: clock, processor s | middle of " + TIMES + " more |");
    System.out.println("| --- | --- | --- | --- |");
    for (String file : files) {
      Billet billet = BilletReader.read(Path.of(file), Names.of(steels, data));
      String name = Path.of(file).getFileName().toString().replace(".json", "");
      row(
          "walk and schedule",
          name,
          () -> advisor.face(billet, billet.steps().size(), Optional.empty()));
      FaceAdvice face = advisor.face(billet, billet.steps().size(), Optional.empty());
      for (int n : new int[] {256, 512, 1024, 2048}) {
        // so much of the face that its whole height is in it
        FaceSize size = new FaceSize(n, n, 1e3 * face.field().upMetres() / n);
        row(n + " by " + n + " pixels, after that", name, () -> face.metal(size));
      }
      row("live: soak, picture, PNG", name, () -> live(face));
    }
  }

  private static byte[] live(FaceAdvice bare) {
    FaceAdvice face = bare.soaked(1070, 30, Exposure.COVERED);
    return GrayPng.of(face.picture(FaceSize.of(face.field(), 0, 640, 480)), face.billet(), "");
  }

  private static void row(String what, String billet, Supplier<Object> work) {
    Took first = took(work);
    List<Took> more = new ArrayList<>();
    for (int i = 0; i < TIMES; i++) {
      more.add(took(work));
    }
    double clock = middle(more.stream().map(Took::clock).toList());
    double processor = middle(more.stream().map(Took::processor).toList());
    System.out.println(
        "| " + what + " | " + billet + " | " + first + " | " + new Took(clock, processor) + " |");
  }

  private static double middle(List<Double> all) {
    return all.stream().sorted().toList().get(all.size() / 2);
  }

  private static Took took(Supplier<Object> work) {
    long clock = System.nanoTime();
    long processor = MACHINE.getProcessCpuTime();
    if (work.get() == null) {
      throw new IllegalStateException("nothing came of it");
    }
    return new Took(
        1e-9 * (System.nanoTime() - clock), 1e-9 * (MACHINE.getProcessCpuTime() - processor));
  }
}
