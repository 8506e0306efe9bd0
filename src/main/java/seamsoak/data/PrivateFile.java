package seamsoak.data;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.atomic.AtomicInteger;

/** Files that nobody but the user may read, in a folder that is the program's own. */
public final class PrivateFile {
  private static final AtomicInteger NUMBER = new AtomicInteger();

  private PrivateFile() {}

  /** Writes it whole or not at all; {@link Fault} where that cannot be done. */
  public static void write(Path file, String text) {
    try {
      Files.createDirectories(file.getParent(), rights("rwx------"));
    } catch (IOException e) {
      throw new Fault(
          Place.of(file.toString()), "its folder cannot be made", "choose another place for it");
    }
    PartFile part =
        new PartFile(
            NUMBER.getAndIncrement(),
            file,
            text.getBytes(StandardCharsets.UTF_8),
            rights("rw-------"));
    try {
      part.move();
    } catch (Fault fault) {
      part.remove();
      throw fault;
    }
  }

  /** Takes away what runs that were killed have left in the folder. */
  public static void clear(Path folder) {
    try {
      PartFile.clear(folder);
    } catch (IOException e) {
      // another time
    }
  }

  /** Rights of the user alone, where the system knows such. */
  private static FileAttribute<?>[] rights(String rights) {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
        }
        : new FileAttribute<?>[0];
  }
}
