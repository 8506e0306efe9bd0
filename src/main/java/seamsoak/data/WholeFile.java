package seamsoak.data;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file so that it is there whole or not at all. */
public final class WholeFile {
  private WholeFile() {}

  /**
   * Writes beside the target, then moves into its place; {@link Fault} when that cannot be done,
   * with nothing left behind. The neighbour is an ordinary new file, since the ones the JDK makes
   * for temporary use can be read by their owner alone and would stay so.
   */
  public static void write(Path target, byte[] content) {
    Path part = target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID());
    try {
      try {
        Files.write(part, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        move(part, target);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (NoSuchFileException e) {
      throw fault(target, "its folder does not exist");
    } catch (AccessDeniedException e) {
      throw fault(target, "its folder may not be written to");
    } catch (IOException e) {
      throw fault(target, "it cannot be written (" + e.getMessage() + ")");
    }
  }

  private static void move(Path part, Path target) throws IOException {
    if (Files.isDirectory(target)) {
      throw new IOException("a folder has that name");
    }
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Fault fault(Path target, String found) {
    return new Fault(Place.of(target.toString()), found, "choose another place for it");
  }
}
