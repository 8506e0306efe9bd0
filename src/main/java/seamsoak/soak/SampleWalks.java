package seamsoak.soak;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
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
 * @param samples the histories
 * @param walks what comes of each, finished or under way
 */
public record SampleWalks(List<Sample> samples, List<ForkJoinTask<Walked>> walks) {
  /** One history walked under its assumptions; without stages where it cannot be walked. */
  record Walked(Shop shop, List<Stage> stages) {
    /** Such as one in which scale has eaten a piece that is thin to begin with. */
    boolean failed() {
      return stages.isEmpty();
    }

    Workpiece end() {
      return stages.get(stages.size() - 1).piece();
    }
  }

  public static SampleWalks begin(
      Billet billet, Correlations correlations, List<Sample> samples, Progress progress) {
    AtomicInteger done = new AtomicInteger();
    return new SampleWalks(
        samples,
        samples.stream()
            .map(
                s ->
                    ForkJoinPool.commonPool()
                        .submit(
                            () -> {
                              Shop shop =
                                  new Shop(correlations, s.assumptions(), Resolution.SAMPLE);
                              List<Stage> stages = walk(shop, billet);
                              progress.at("cases", done.incrementAndGet(), samples.size());
                              return new Walked(shop, stages);
                            }))
            .toList());
  }

  /** A history that cannot be walked counts as one that was not. */
  private static List<Stage> walk(Shop shop, Billet billet) {
    try {
      return BilletWalk.ofLines(shop).walk(billet);
    } catch (Fault impossible) {
      return List.of();
    }
  }

  /** Which samples could be walked. */
  int[] done() {
    return IntStream.range(0, walks.size()).filter(i -> !walked(i).failed()).toArray();
  }

  Walked walked(int sample) {
    return walks.get(sample).join();
  }
}
