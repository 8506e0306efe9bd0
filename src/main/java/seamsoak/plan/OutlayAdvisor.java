package seamsoak.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Defaults;
import seamsoak.billet.Heat;
import seamsoak.billet.Jacket;
import seamsoak.billet.Now;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Size;
import seamsoak.billet.Stack;
import seamsoak.billet.Stage;
import seamsoak.billet.Step;
import seamsoak.data.Faults;
import seamsoak.property.Correlations;
import seamsoak.schedule.Coolant;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.unit.Length;

/** Reckons what the work on a billet takes, the stock backward from the blade. */
public final class OutlayAdvisor {
  /** What each end of the finished bar loses to folds and open welds, of its width; judgement. */
  public static final double END_OF_WIDTH = 0.5;

  /** Lost in each cut of the stock, as of the steps that do not say otherwise. */
  public static final double KERF_MM = Defaults.KERF.millimetres();

  /** A stack is no longer than that, m. */
  private static final double LONGEST_METRES = 2;

  /** To that the length of the stack is found, m. */
  private static final double NEAR_METRES = 5e-4;

  private final Correlations correlations;

  public OutlayAdvisor(Correlations correlations) {
    this.correlations = correlations;
  }

  /**
   * @param advice on the same billet, which has its times
   */
  public Outlay of(Billet billet, Advice advice) {
    Optional<Now> now = Now.of(billet.steps());
    List<Step> left = now.map(n -> n.left(billet.steps())).orElse(billet.steps());
    int heats = 0;
    double minutes = 0;
    for (Step step : left) {
      int skip = now.filter(n -> n.step() == step).map(Now::heats).orElse(0);
      for (Heat heat : step.heats()) {
        int open = Math.max(0, heat.times() - skip);
        skip = Math.max(0, skip - heat.times());
        heats += open;
        minutes += open * (heat.riseTaken().minutes() + heat.hold().minutes());
      }
    }
    List<Stage> stages = walk(billet);
    Size end = stages.get(stages.size() - 1).piece().size();
    Optional<Outlay.Wanted> wanted =
        now.isPresent()
            ? Optional.empty()
            : billet.blade().length().map(l -> wanted(billet, l, end));
    double piece =
        wanted.flatMap(Outlay.Wanted::pieceMm).orElse(billet.stack().length().millimetres());
    return new Outlay(
        heats,
        minutes,
        spells(advice),
        end.lengthMetres() * 1e3,
        wanted,
        now.isPresent() ? List.of() : stock(billet, piece));
  }

  private static List<Outlay.Spell> spells(Advice advice) {
    Map<Heater, Double> sums = new LinkedHashMap<>();
    for (Segment s : advice.schedule().segments()) {
      if (s.in() != Heater.BENCH && s.cool().filter(c -> c != Coolant.Plain.KILN).isEmpty()) {
        sums.merge(s.in(), s.minutes(), Double::sum);
      }
    }
    List<Outlay.Spell> all = new ArrayList<>();
    sums.forEach((in, minutes) -> all.add(new Outlay.Spell(in, minutes)));
    return List.copyOf(all);
  }

  private List<Stage> walk(Billet billet) {
    Shop shop = new Shop(correlations, Assumptions.USUAL, Resolution.SAMPLE);
    return new BilletWalk(shop).walk(billet, new Faults());
  }

  private Outlay.Wanted wanted(Billet billet, Length blade, Size end) {
    double ends = 2 * END_OF_WIDTH * end.widthMetres();
    double need = blade.metres() + ends;
    return new Outlay.Wanted(
        blade.millimetres(), ends * 1e3, piece(billet, need).map(m -> m * 1e3));
  }

  /** The shortest stack that gives a bar of a length: slices are whole, so it grows in steps. */
  private Optional<Double> piece(Billet billet, double need) {
    double enough = LONGEST_METRES;
    if (bar(billet, enough) < need) {
      return Optional.empty();
    }
    double less = 0;
    while (enough - less > NEAR_METRES) {
      double middle = (enough + less) / 2;
      if (bar(billet, middle) < need) {
        less = middle;
      } else {
        enough = middle;
      }
    }
    return Optional.of(enough);
  }

  /** Length of the bar that a stack of a length gives, m; none where it cannot be worked. */
  private double bar(Billet billet, double metres) {
    List<Stage> stages = walk(ofLength(billet, metres));
    return stages.size() <= billet.steps().size()
        ? 0
        : stages.get(stages.size() - 1).piece().size().lengthMetres();
  }

  private static Billet ofLength(Billet b, double metres) {
    return b.with(b.stack().ofLength(new Length(metres)));
  }

  private List<Outlay.Stock> stock(Billet billet, double pieceMm) {
    Stack stack = billet.stack();
    List<Outlay.Stock> all = new ArrayList<>();
    for (int i = 0; i < stack.steels().size(); i++) {
      int count = (stack.layers() - i + stack.steels().size() - 1) / stack.steels().size();
      all.add(
          new Outlay.Stock(
              stack.steel(i).id(),
              false,
              count,
              stack.thickness(i).millimetres(),
              stack.width().millimetres(),
              pieceMm,
              KERF_MM));
    }
    List<Stage> stages = walk(ofLength(billet, pieceMm / 1e3));
    for (Step step : billet.steps()) {
      if (step instanceof Step.Tile tile
          && tile.jacket().isPresent()
          && step.mark().number() < stages.size()) {
        Jacket jacket = tile.jacket().get();
        Size size = stages.get(step.mark().number()).piece().size();
        all.add(
            new Outlay.Stock(
                jacket.steel().id(),
                true,
                1,
                jacket.thickness().millimetres(),
                2e3 * (size.widthMetres() + size.thicknessMetres()),
                size.lengthMetres() * 1e3,
                KERF_MM));
      }
    }
    return all;
  }
}
