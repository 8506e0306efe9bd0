package seamsoak.data;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A text file of the user's own that the program changes, as it was when it was read.
 *
 * <p>It is written whole or not at all, and only while it is as it was read: what another hand or
 * another run wrote meanwhile is not lost. As it was before the program first wrote to it, it is
 * kept beside, as {@code NAME.before}; what each writing changed goes to {@code NAME.undo}, so that
 * the last one can be taken back.
 */
public final class UserFile {
  private static final byte[] MARK = "\uFEFF".getBytes(StandardCharsets.UTF_8);

  private final String name;
  private final Path file;
  private final byte[] bytes;
  private final String text;

  private UserFile(String name, Path file, byte[] bytes) {
    this.name = name;
    this.file = file;
    this.bytes = bytes;
    this.text = TextFile.text(name, bytes);
  }

  /**
   * What was taken back.
   *
   * @param what it was, as it was called when it was written
   * @param file as it is now
   */
  public record Undone(String what, UserFile file) {}

  /**
   * Reads a file of at most 1 MB; {@link Fault} when it cannot be read or is no file. A link is
   * followed: it stays, and what it leads to is changed.
   *
   * @param name of the file as the user wrote it
   */
  public static UserFile read(String name, Path file) {
    if (Files.exists(file) && !Files.isDirectory(file) && !Files.isRegularFile(file)) {
      throw new Fault(Place.of(name), "it is a device or pipe", "give a file");
    }
    byte[] bytes = TextFile.bytes(name, file);
    try {
      return new UserFile(name, file.toRealPath(), bytes);
    } catch (IOException e) {
      throw new Fault(Place.of(name), "it is gone", "check its name and folder");
    }
  }

  /**
   * Writes a new file of a user's own; {@link Fault} with nothing written where there is one of
   * that name.
   *
   * @param name of the file as the user knows it
   */
  public static UserFile create(String name, Path file, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return FolderLock.around(
        name,
        file,
        () -> {
          if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new Fault(
                Place.of(name), "there is a file of that name by now", "nothing was written");
          }
          PartFile part = new PartFile(0, file, bytes);
          try {
            part.move();
          } finally {
            part.remove();
          }
          return new UserFile(name, file, bytes);
        });
  }

  /** Whether another hand has changed it since it was read, or taken it away. */
  public boolean isChanged() {
    try {
      return !Arrays.equals(bytes, TextFile.bytes(name, file));
    } catch (Fault gone) {
      return true;
    }
  }

  /** What it says, without a byte order mark. */
  public String text() {
    return text;
  }

  /** Where it is kept as it was before the program first wrote to it. */
  public Path before() {
    return beside(".before");
  }

  private Path beside(String ending) {
    return file.resolveSibling(file.getFileName() + ending);
  }

  /**
   * Writes another text in its place; {@link Fault} with nothing written when that cannot be done,
   * or the file is not as it was read.
   *
   * @param what that is, for whoever takes it back
   * @return the file as it is now
   */
  public UserFile write(String text, String what) {
    return write(text, what, "");
  }

  /**
   * The same of something that was sent, and may be sent once more by whoever has not heard that it
   * was taken.
   *
   * @param id by which {@link #holds} knows it again; empty for none
   */
  public UserFile write(String text, String what, String id) {
    byte[] next = encoded(text);
    if (Arrays.equals(next, bytes)) {
      return this;
    }
    return FolderLock.around(
        name,
        file,
        () -> {
          requireUnchanged();
          Journal journal = Journal.read(beside(".undo")).at(bytes).with(what, id, bytes, next);
          Map<Path, byte[]> files = new LinkedHashMap<>();
          if (!Files.exists(before(), LinkOption.NOFOLLOW_LINKS)) {
            files.put(before(), bytes);
          }
          files.put(beside(".undo"), journal.bytes());
          files.put(file, next);
          lay(files);
          return new UserFile(name, file, next);
        });
  }

  /** What was written last and can be taken back, if anything. */
  public Optional<String> last() {
    Journal journal = Journal.read(beside(".undo")).at(bytes);
    return journal.isEmpty() || journal.undo(bytes).isEmpty()
        ? Optional.empty()
        : Optional.of(journal.what());
  }

  /** Whether what was sent with an id was written and not taken back, of late. */
  public boolean holds(String id) {
    return Journal.read(beside(".undo")).at(bytes).has(id);
  }

  /**
   * Takes back what was written last, byte for byte; {@link Fault} with nothing written when there
   * is nothing, or another hand has changed the file since.
   */
  public Undone undo() {
    return FolderLock.around(
        name,
        file,
        () -> {
          requireUnchanged();
          Journal journal = Journal.read(beside(".undo")).at(bytes);
          if (journal.isEmpty()) {
            throw fault("nothing was recorded in it", "there is nothing to take back");
          }
          byte[] earlier =
              journal
                  .undo(bytes)
                  .orElseThrow(
                      () ->
                          fault(
                              "it was changed by another hand since the last record",
                              "nothing was taken back; change it by hand"));
          Journal left = journal.withoutLast();
          Map<Path, byte[]> files = new LinkedHashMap<>();
          files.put(file, earlier);
          if (!left.isEmpty()) {
            files.put(beside(".undo"), left.bytes());
          }
          lay(files);
          if (left.isEmpty()) {
            remove(beside(".undo"));
          }
          return new Undone(journal.what(), new UserFile(name, file, earlier));
        });
  }

  /** All are on the disk before the first takes its place. */
  private void lay(Map<Path, byte[]> files) {
    List<PartFile> parts = new ArrayList<>();
    try {
      files.forEach(
          (target, content) ->
              parts.add(new PartFile(parts.size(), target, content).inPlaceOf(file)));
      parts.forEach(PartFile::move);
    } finally {
      parts.forEach(PartFile::remove);
    }
  }

  private static void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // what it says is of no use any more, and no harm
    }
  }

  private void requireUnchanged() {
    if (!Files.isRegularFile(file)) {
      throw fault("it was taken away while this ran", "nothing was written");
    }
    if (!Files.isWritable(file)) {
      throw fault("it may not be written to", "nothing was written; check its permissions");
    }
    if (!Arrays.equals(bytes, TextFile.bytes(name, file))) {
      throw fault(
          "it was changed by another hand while this ran", "nothing was written; try it again");
    }
  }

  private byte[] encoded(String text) {
    try {
      ByteBuffer encoded = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
      boolean marked = Arrays.equals(MARK, Arrays.copyOf(bytes, MARK.length));
      ByteBuffer all = ByteBuffer.allocate(MARK.length + encoded.remaining());
      if (marked) {
        all.put(MARK);
      }
      all.put(encoded).flip();
      byte[] next = new byte[all.remaining()];
      all.get(next);
      if (next.length > TextFile.MOST_BYTES) {
        throw fault("it would grow beyond 1 MB", "nothing was written");
      }
      return next;
    } catch (CharacterCodingException e) {
      throw fault("what should be written is no text", "nothing was written");
    }
  }

  private Fault fault(String found, String expected) {
    return new Fault(Place.of(name), found, expected);
  }
}
