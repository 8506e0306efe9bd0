package seamsoak.data;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/**
 * One at a time changes files of the user's in a folder; others wait. The system lets go of the
 * lock when a run is killed. Its file stays: one that is taken away while another run waits for it
 * would let in two.
 */
final class FolderLock {
  static final String NAME = ".seamsoak-lock";

  private static final long PATIENCE_SECONDS = 10;
  private static final long PAUSE_MILLIS = 10;

  /** The system's lock is the whole program's, and any of its threads could undo it. */
  private static final ReentrantLock IN_THIS_PROGRAM = new ReentrantLock(true);

  private FolderLock() {}

  /**
   * Does something once no other run writes where the file is, and what killed runs have left there
   * is cleared; {@link Fault} when that takes too long or cannot be.
   *
   * @param name of the file as the user wrote it
   */
  static <T> T around(String name, Path file, Supplier<T> writing) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    try {
      if (!IN_THIS_PROGRAM.tryLock(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        throw busy(name);
      }
      try (FileChannel channel =
          FileChannel.open(
              file.resolveSibling(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
        while (channel.tryLock() == null) {
          if (System.nanoTime() > end) {
            throw busy(name);
          }
          Thread.sleep(PAUSE_MILLIS);
        }
        PartFile.clear(file.getParent());
        return writing.get();
      } finally {
        IN_THIS_PROGRAM.unlock();
      }
    } catch (IOException e) {
      throw new Fault(
          Place.of(name),
          "its folder may not be written to"
              + (e instanceof FileSystemException f && !(e instanceof AccessDeniedException)
                  ? " (" + f.getReason() + ")"
                  : ""),
          "put it where it may be changed");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Fault(Place.of(name), "the run was stopped", "nothing was written");
    }
  }

  private static Fault busy(String name) {
    return new Fault(
        Place.of(name), "another run is writing there", "nothing was written; try it again");
  }
}
