package seamsoak.schedule.demand;

import java.util.List;
import java.util.Optional;
import seamsoak.property.hardening.HardeningWindow;
import seamsoak.steel.TemperatureRange;

/**
 * The heat to quench from: within the windows of all steels that harden, or of the edge where they
 * do not meet.
 *
 * @param celsius the heat
 * @param edge the steel that cuts
 * @param windows of the steels that harden
 */
public record HardeningHeat(double celsius, SteelNow edge, List<Window> windows) {
  /** Nearer to a window than this no kiln can tell it from within, K; judgement. */
  public static final double NEAR = 6;

  /**
   * Where a steel hardens well.
   *
   * @param steel it is of
   * @param range with the carbon it has by now
   */
  public record Window(SteelNow steel, TemperatureRange range) {
    public static Window of(SteelNow steel) {
      HardeningWindow window = steel.k().hardening().window();
      return new Window(steel, window.of(steel.steel(), steel.lines(), steel.carbonPct()));
    }

    /** Published range, if there is one. */
    public Optional<TemperatureRange> sheet() {
      return steel.steel().heatTreatment().harden();
    }

    public boolean holds(double celsius) {
      return celsius > range.lowC() - NEAR && celsius < range.highC() + NEAR;
    }
  }

  /** Empty when no steel hardens. */
  public static Optional<HardeningHeat> of(List<SteelNow> steels, Optional<String> wantedEdge) {
    List<Window> windows =
        steels.stream().filter(s -> s.hardens() && !s.beyondFormulas()).map(Window::of).toList();
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
    TemperatureRange own =
        windows.stream().filter(w -> w.steel() == edge).findFirst().orElseThrow().range();
    double shared =
        edge.k().hardening().window().heatCelsius(windows.stream().map(Window::range).toList());
    double celsius = Math.max(own.lowC(), Math.min(own.highC(), shared));
    return Optional.of(new HardeningHeat(celsius, edge, windows));
  }

  /** The windows as an answer has them. */
  public List<Conflict.Window> told() {
    return windows.stream()
        .map(
            w ->
                new Conflict.Window(
                    w.steel().id(), w.range().lowC(), w.range().highC(), w.sheet().isPresent()))
        .toList();
  }

  /** The same from no hotter than that, where all windows reach so low. */
  public HardeningHeat noHotterThan(double mostCelsius) {
    return celsius > mostCelsius && windows.stream().allMatch(w -> w.range().lowC() <= mostCelsius)
        ? new HardeningHeat(mostCelsius, edge, windows)
        : this;
  }

  /** Whether one heat suits them all. */
  public boolean agrees() {
    return windows.stream().allMatch(w -> w.holds(celsius));
  }

  /** Minutes at heat before the quench, for carbide to dissolve. */
  public double holdMinutes(boolean carbideIsCoarse) {
    double minutes = 5;
    for (Window w : windows) {
      if (w.steel().overEutectoid()) {
        minutes = Math.max(minutes, 10);
      }
      minutes = Math.max(minutes, w.steel().steel().heatTreatment().leastSoakMinutes().orElse(0));
    }
    return carbideIsCoarse && windows.stream().anyMatch(w -> w.steel().overEutectoid())
        ? minutes + 5
        : minutes;
  }

  public static double round(double celsius) {
    return 5 * Math.round(celsius / 5);
  }
}
