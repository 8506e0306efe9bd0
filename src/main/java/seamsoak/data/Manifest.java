package seamsoak.data;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What this program has written to a folder, as {@code sha256sum -c} reads it. A file is ours as
 * long as it is what the list says: one that somebody else has put there, or has changed, is not.
 *
 * @param entries two of one name where a file is about to be replaced
 */
record Manifest(List<Entry> entries) {
  static final String NAME = "seamsoak.sha256";

  private static final String HEAD = "# Written by ";
  private static final int MOST_BYTES = 64 << 20;

  /** No name that leads out of the folder, or that is none on some system. */
  private static final Pattern LINE =
      Pattern.compile("([0-9a-f]{64}) {2}([^/\\\\:*?\"<>|\\p{Cntrl}]+)");

  /**
   * A file.
   *
   * @param sum SHA-256 of its bytes
   */
  record Entry(String name, String sum) {
    private Entry(String name, byte[] content) {
      this(name, digest(content));
    }

    private boolean isIn(Path folder) {
      return bytes(folder.resolve(name)).filter(found -> digest(found).equals(sum)).isPresent();
    }
  }

  /** As it lies in a folder; empty where there is none. */
  static Manifest in(Path folder) {
    return new Manifest(
        text(folder)
            .lines()
            .map(LINE::matcher)
            .filter(m -> m.matches())
            .map(m -> new Entry(m.group(2), m.group(1)))
            .toList());
  }

  /** Whether something has its place in a folder that is none. */
  static boolean isTaken(Path folder) {
    return Files.exists(folder.resolve(NAME)) && !text(folder).startsWith(HEAD);
  }

  /** Only what a folder holds just so. */
  Manifest foundIn(Path folder) {
    return only(e -> e.isIn(folder));
  }

  Manifest without(Collection<String> names) {
    return only(e -> !names.contains(e.name()));
  }

  private Manifest only(Predicate<Entry> wanted) {
    return new Manifest(entries.parallelStream().filter(wanted).toList());
  }

  /** With more files; those of the same name stay beside them. */
  Manifest with(Map<String, byte[]> files) {
    List<Entry> more =
        files.entrySet().parallelStream().map(f -> new Entry(f.getKey(), f.getValue())).toList();
    return new Manifest(Stream.of(entries, more).flatMap(List::stream).distinct().toList());
  }

  List<String> names() {
    return entries.stream().map(Entry::name).distinct().toList();
  }

  /**
   * As it is written.
   *
   * @param program name and version of this program
   */
  byte[] bytes(String program) {
    String lines =
        entries.stream()
            .sorted(Comparator.comparing(Entry::name))
            .map(e -> e.sum() + "  " + e.name() + "\n")
            .collect(Collectors.joining());
    return (HEAD + program + "; what is changed is no longer its own.\n" + lines)
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String text(Path folder) {
    return new String(bytes(folder.resolve(NAME)).orElse(new byte[0]), StandardCharsets.UTF_8);
  }

  /** What a file of that name holds, or as much of it as can be ours. */
  private static Optional<byte[]> bytes(Path file) {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      return Optional.of(in.readNBytes(MOST_BYTES));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** SHA-256. */
  static String digest(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }
}
