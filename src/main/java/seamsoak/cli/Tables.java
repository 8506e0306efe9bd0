package seamsoak.cli;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.FutureTask;
import seamsoak.data.DataFolder;
import seamsoak.property.Correlations;
import seamsoak.steel.SteelTable;

/**
 * The tables that nearly every command needs, each read once: they may change meanwhile, and the
 * run's mark is of what was read.
 */
final class Tables {
  private final DataFolder folder;
  private final FutureTask<Correlations> correlations;
  private final FutureTask<SteelTable> steels;

  Tables(DataFolder folder) {
    this.folder = folder;
    this.correlations = new FutureTask<>(() -> Correlations.load(folder));
    this.steels = new FutureTask<>(() -> SteelTable.load(folder));
  }

  /** Begins to read beside whatever comes next; who asks waits, or reads what nobody has begun. */
  Tables begin() {
    ForkJoinPool.commonPool().execute(correlations);
    ForkJoinPool.commonPool().execute(steels);
    return this;
  }

  DataFolder folder() {
    return folder;
  }

  Correlations correlations() {
    return now(correlations);
  }

  SteelTable steels() {
    return now(steels);
  }

  private static <T> T now(FutureTask<T> table) {
    table.run();
    try {
      return table.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException known) {
        throw known;
      }
      if (e.getCause() instanceof Error broken) {
        throw broken;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
