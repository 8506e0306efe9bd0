package seamsoak.page;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import seamsoak.billet.Billet;
import seamsoak.data.Fault;
import seamsoak.page.form.Kit;
import seamsoak.plan.Advice;
import seamsoak.plan.Outlay;
import seamsoak.plan.OutlayAdvisor;
import seamsoak.plan.PlanAdvisor;
import seamsoak.state.Progress;
import seamsoak.words.PageWords;

/**
 * Works out answers, one at a time: of each billet the middle estimate, then the band. A newer text
 * of the same billet stops what is worked out for an older one.
 */
final class Work implements AutoCloseable {
  /** How far an answer has come. */
  enum Stage {
    NONE,
    MIDDLE,
    BAND
  }

  /**
   * What is known by now.
   *
   * @param advice as far as that; empty at first, and where it cannot be worked out
   * @param done cases tried for the band
   * @param of cases in all
   * @param outlay what the work takes, once the band is known
   * @param failed why there will be no more; empty where all is well
   */
  record Known(
      Stage stage,
      Optional<Advice> advice,
      int done,
      int of,
      Optional<Outlay> outlay,
      String failed) {
    private Known with(Stage further, Advice advice, int tried) {
      return new Known(further, Optional.of(advice), tried, of, outlay, failed);
    }

    boolean isWhole() {
      return stage == Stage.BAND || !failed.isEmpty();
    }
  }

  private final Kit kit;
  private final Bell bell;
  private final Map<String, Job> jobs = new ConcurrentHashMap<>();
  private final ExecutorService thread = Executors.newSingleThreadExecutor(Work::thread);

  /**
   * @param bell rung whenever more is known
   */
  Work(Kit kit, Bell bell) {
    this.bell = bell;
    this.kit = kit;
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(null, work, "answers", 4 << 20);
    thread.setDaemon(true);
    return thread;
  }

  /** The answer on a text of a billet as far as it is known; begins to work on it if nobody has. */
  Known known(String desk, int number, Billet billet) {
    return job(desk, number, billet).known();
  }

  /**
   * The same once more is known than that, or after a time.
   *
   * @param than what was known before
   */
  Known more(String desk, int number, Billet billet, Stage than, int done, long millis)
      throws InterruptedException {
    return job(desk, number, billet).more(than, done, millis);
  }

  private Job job(String desk, int number, Billet billet) {
    Job job =
        jobs.compute(
            desk,
            (id, old) -> {
              if (old != null && old.number >= number) {
                return old;
              }
              if (old != null) {
                old.stop();
              }
              return new Job(number, billet);
            });
    job.begin();
    return job;
  }

  /** Stops what is worked out for a billet that is no longer looked at. */
  void stop(String desk) {
    Job job = jobs.remove(desk);
    if (job != null) {
      job.stop();
    }
  }

  @Override
  public void close() {
    jobs.keySet().forEach(this::stop);
    thread.shutdownNow();
  }

  private final class Job implements Progress {
    private final int number;
    private final Billet billet;
    private Known known =
        new Known(Stage.NONE, Optional.empty(), 0, kit.cases(), Optional.empty(), "");
    private boolean begun;
    private volatile boolean stopped;

    Job(int number, Billet billet) {
      this.number = number;
      this.billet = billet;
    }

    synchronized void begin() {
      if (!begun) {
        begun = true;
        thread.execute(this::run);
      }
    }

    synchronized void stop() {
      stopped = true;
      notifyAll();
    }

    synchronized Known known() {
      return known;
    }

    synchronized Known more(Stage than, int done, long millis) throws InterruptedException {
      long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
      while (!stopped && !known.isWhole() && known.stage() == than && known.done() <= done) {
        long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
        if (left <= 0) {
          break;
        }
        wait(left);
      }
      return known;
    }

    private synchronized void knows(Known more) {
      known = more;
      notifyAll();
      bell.ring();
    }

    private void run() {
      try {
        int all = kit.cases();
        requireWanted();
        Advice whole =
            new PlanAdvisor(kit.correlations(), kit.cautions(), all)
                .advise(billet, this, likely -> knows(known.with(Stage.MIDDLE, likely, 0)));
        Outlay outlay = new OutlayAdvisor(kit.correlations()).of(billet, whole);
        knows(new Known(Stage.BAND, Optional.of(whole), all, all, Optional.of(outlay), ""));
        // what the histories took is given back to the machine while the smith reads
        System.gc();
      } catch (CancellationException newer) {
        // nobody waits for it any more
      } catch (Fault fault) {
        fail(fault.mistakes().get(0).said());
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError broken) {
        fail(PageWords.SOMETHING_BROKE);
      }
    }

    private synchronized void fail(String why) {
      knows(
          new Known(known.stage(), known.advice(), known.done(), known.of(), known.outlay(), why));
    }

    @Override
    public void at(String what, int done, int of) {
      synchronized (this) {
        int further = Math.max(done, known.done());
        known =
            new Known(known.stage(), known.advice(), further, of, known.outlay(), known.failed());
        notifyAll();
      }
    }

    @Override
    public boolean isStopped() {
      return stopped;
    }
  }
}
