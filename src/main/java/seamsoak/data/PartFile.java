package seamsoak.data;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A file beside its place, whole, until it is moved there. */
final class PartFile {
  /** Process times are known to a jiffy or so, and clocks are set now and then. */
  private static final Duration CLOCKS_DIFFER = Duration.ofSeconds(2);

  private static final Pattern PART = Pattern.compile("\\.seamsoak-([0-9]{1,18})-.+");

  private final Path target;
  private final Path part;

  /**
   * Writes beside the target; {@link Fault} when that cannot be done, with nothing left behind. The
   * neighbor is an ordinary new file, since the ones the JDK makes for temporary use can be read by
   * their owner alone and would stay so.
   *
   * @param number tells apart what one run lays for the same place
   * @param rights of a file that is not to have those of any new one
   */
  PartFile(int number, Path target, byte[] content, FileAttribute<?>... rights) {
    this.target = target;
    this.part =
        target.resolveSibling(
            ".seamsoak-"
                + ProcessHandle.current().pid()
                + "-"
                + number
                + "-"
                + target.getFileName());
    try {
      if (Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
        throw new IOException("a folder has that name");
      }
      if (Files.exists(target) && !Files.isRegularFile(target)) {
        throw new IOException("a device or pipe has that name");
      }
      write(content, rights);
    } catch (IOException e) {
      remove();
      throw fault(e);
    }
  }

  /** Down to the disk, so that the name never stands for a file whose content was lost. */
  private void write(byte[] content, FileAttribute<?>... rights) throws IOException {
    try (FileChannel out =
        FileChannel.open(
            part, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), rights)) {
      ByteBuffer left = ByteBuffer.wrap(content);
      while (left.hasRemaining()) {
        out.write(left);
      }
      out.force(true);
    }
  }

  /**
   * For a file of the user's that is replaced: who may read and write it stays, where the system
   * knows such rights. Told to stop meanwhile, the program leaves nothing beside it.
   */
  PartFile inPlaceOf(Path old) {
    part.toFile().deleteOnExit();
    try {
      Files.setPosixFilePermissions(part, Files.getPosixFilePermissions(old));
    } catch (UnsupportedOperationException | IOException e) {
      // then it has those of any new file
    }
    return this;
  }

  /** Puts it in its place. */
  void move() {
    try {
      try {
        Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
      }
    } catch (IOException e) {
      throw fault(e);
    }
  }

  /** Takes away what was written beside the target, if it is still there. */
  void remove() {
    try {
      Files.deleteIfExists(part);
    } catch (IOException e) {
      // the next run clears it
    }
  }

  /** Takes away what runs that were killed have left in a folder. */
  static void clear(Path folder) throws IOException {
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, ".seamsoak-*")) {
      for (Path part : parts) {
        Matcher m = PART.matcher(part.getFileName().toString());
        if (m.matches()
            && Files.isRegularFile(part, LinkOption.NOFOLLOW_LINKS)
            && !isBeingWritten(part, Long.parseLong(m.group(1)))) {
          Files.deleteIfExists(part);
        }
      }
    }
  }

  /** Numbers of processes are used again, so the process must be older than the file, too. */
  private static boolean isBeingWritten(Path part, long pid) throws IOException {
    Optional<Instant> start =
        ProcessHandle.of(pid).flatMap(process -> process.info().startInstant());
    Instant written;
    try {
      written = Files.getLastModifiedTime(part).toInstant();
    } catch (NoSuchFileException e) {
      return true; // and it is in its place by now
    }
    return start.isPresent() && !start.get().isAfter(written.plus(CLOCKS_DIFFER));
  }

  private Fault fault(IOException e) {
    String reason =
        e instanceof NoSuchFileException
            ? "its folder is gone"
            : e instanceof AccessDeniedException
                ? "its folder may not be written to"
                : e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    return new Fault(
        Place.of(target.toString()),
        "it cannot be written (" + reason + ")",
        "choose another place for it");
  }
}
