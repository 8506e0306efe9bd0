package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.steel.TemperatureRange;

/**
 * The heat to quench from: within the windows of all steels that harden, or of the edge where they
 * do not meet.
 *
 * @param celsius the heat
 * @param edge the steel that cuts
 * @param windows of the steels that harden
 */
record HardeningHeat(double celsius, SteelNow edge, List<Window> windows) {
  /** Above Ac3 for a steel without a sheet, or whose carbon has moved, K; common practice. */
  private static final double ABOVE_AC3 = 30;

  /** Above Ac1 where carbide stays, K; common practice. */
  private static final double ABOVE_AC1 = 45;

  private static final double WIDTH = 25;

  /** How far into the window that all share, from its cool end; judgement. */
  private static final double INTO = 0.4;

  /** Nearer to a window than this no kiln can tell it from within, K; judgement. */
  static final double NEAR = 6;

  /**
   * Where a steel hardens well.
   *
   * @param steel it is of
   * @param lowC cool end
   * @param highC hot end
   * @param sheet published range, if there is one
   */
  record Window(SteelNow steel, double lowC, double highC, Optional<TemperatureRange> sheet) {
    static Window of(SteelNow steel) {
      double need =
          steel.overEutectoid()
              ? steel.ac1C() + ABOVE_AC1
              : steel.lines().ac3Celsius(steel.carbonPct()) + ABOVE_AC3;
      Optional<TemperatureRange> sheet = steel.steel().heatTreatment().harden();
      double low = sheet.map(r -> Math.max(r.lowC(), need)).orElse(need);
      double high = sheet.map(TemperatureRange::highC).orElse(need + WIDTH);
      return new Window(steel, low, Math.max(low, high), sheet);
    }

    boolean holds(double celsius) {
      return celsius > lowC - NEAR && celsius < highC + NEAR;
    }
  }

  /** Empty when no steel hardens. */
  static Optional<HardeningHeat> of(List<SteelNow> steels, Optional<String> wantedEdge) {
    List<Window> windows = new ArrayList<>();
    steels.stream()
        .filter(s -> s.hardens() && !s.beyondFormulas())
        .map(Window::of)
        .forEach(windows::add);
    if (windows.isEmpty()) {
      return Optional.empty();
    }
    SteelNow edge =
        windows.stream()
            .map(Window::steel)
            .filter(s -> wantedEdge.map(s.id()::equals).orElse(false))
            .findFirst()
            .orElseGet(
                () ->
                    windows.stream()
                        .map(Window::steel)
                        .reduce((a, b) -> b.carbonPct() > a.carbonPct() ? b : a)
                        .orElseThrow());
    double low = windows.stream().mapToDouble(Window::lowC).max().orElseThrow();
    double high = windows.stream().mapToDouble(Window::highC).min().orElseThrow();
    double celsius;
    if (low <= high) {
      celsius = Math.max(low, Math.min(high, round(low + INTO * (high - low))));
    } else {
      Window own = windows.stream().filter(w -> w.steel() == edge).findFirst().orElseThrow();
      celsius = Math.max(own.lowC(), Math.min(own.highC(), (low + high) / 2));
    }
    return Optional.of(new HardeningHeat(celsius, edge, List.copyOf(windows)));
  }

  /** The windows as an answer has them. */
  List<Conflict.Window> told() {
    return windows.stream()
        .map(w -> new Conflict.Window(w.steel().id(), w.lowC(), w.highC()))
        .toList();
  }

  /** Whether one heat suits them all. */
  boolean agrees() {
    return windows.stream().allMatch(w -> w.holds(celsius));
  }

  /** Minutes at heat before the quench, for carbide to dissolve. */
  double holdMinutes(boolean carbideIsCoarse) {
    double minutes = 5;
    for (Window w : windows) {
      if (w.steel().overEutectoid()) {
        minutes = Math.max(minutes, 10);
      }
      minutes = Math.max(minutes, leastStated(w.steel()));
    }
    return carbideIsCoarse && windows.stream().anyMatch(w -> w.steel().overEutectoid())
        ? minutes + 5
        : minutes;
  }

  private static double leastStated(SteelNow steel) {
    return steel
        .steel()
        .heatTreatment()
        .soakMinutes()
        .map(words -> words.split("[^0-9.]+")[0])
        .filter(number -> !number.isEmpty())
        .map(Double::parseDouble)
        .orElse(0.0);
  }

  static double round(double celsius) {
    return 5 * Math.round(celsius / 5);
  }
}
