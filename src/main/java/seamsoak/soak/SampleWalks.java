package seamsoak.soak;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.data.Fault;
import seamsoak.property.Correlations;
import seamsoak.soak.Histories.Sample;
import seamsoak.state.Progress;

/**
 * A billet walked through its possible histories. The walks begin at once on whatever cores are
 * idle; what comes of each depends on nothing but its sample.
 *
 * @param walks what comes of each, finished or under way
 * @param progress hears of them, and tells whether anybody still waits
 */
public record SampleWalks(List<ForkJoinTask<Walk>> walks, Progress progress) {
  /** One history walked under its assumptions; without stages where it cannot be walked. */
  record Walk(Sample sample, Shop shop, List<Stage> stages) {
    Workpiece end() {
      return stages.get(stages.size() - 1).piece();
    }
  }

  /**
   * @param before how many were walked earlier, as progress counts
   */
  public static SampleWalks begin(
      Billet billet,
      Correlations correlations,
      List<Sample> samples,
      int before,
      Progress progress) {
    AtomicInteger done = new AtomicInteger(before);
    return new SampleWalks(
        samples.stream()
            .map(
                s ->
                    ForkJoinPool.commonPool()
                        .submit(
                            () -> {
                              progress.requireWanted();
                              Shop shop =
                                  new Shop(correlations, s.assumptions(), Resolution.SAMPLE);
                              List<Stage> stages = walk(shop, billet);
                              progress.at("cases", done.incrementAndGet(), before + samples.size());
                              return new Walk(s, shop, stages);
                            }))
            .toList(),
        progress);
  }

  /**
   * A history that cannot be walked counts as one that was not, such as one in which scale has
   * eaten a piece that is thin to begin with.
   */
  private static List<Stage> walk(Shop shop, Billet billet) {
    try {
      return BilletWalk.ofLines(shop).walk(billet);
    } catch (Fault impossible) {
      return List.of();
    }
  }

  int count() {
    return walks.size();
  }

  /**
   * Those that could be walked, in the order of their samples. Whoever asks takes a hand: only the
   * task laid down last is not left to the others, so they are asked for from the last one on.
   */
  List<Walk> done() {
    for (int i = walks.size() - 1; i >= 0; i--) {
      walks.get(i).quietlyJoin();
    }
    return walks.stream().map(ForkJoinTask::join).filter(w -> !w.stages().isEmpty()).toList();
  }
}
