package seamsoak.data;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The files that one run writes to a folder. All of them are on the disk, under other names, before
 * the first takes its place: a run that fails or is told to stop leaves the old set as it was, and
 * one that is killed leaves whole files, each of which names its run. What earlier runs put there
 * and this one has no more is taken away, so that the folder tells of one run.
 */
public final class FileSet {
  private final Path folder;
  private final Pattern members;
  private final Map<String, byte[]> files = new LinkedHashMap<>();
  private final List<WholeFile> parts = new ArrayList<>();
  private boolean stopped;

  /**
   * A set still empty; {@link Fault} when no files can be put there.
   *
   * @param members names that such a set may hold, though not every run has them all
   */
  public FileSet(Path folder, Pattern members) {
    this.folder = folder;
    this.members = members;
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw fault("it is a file, not a folder");
    }
    if (Files.exists(folder) && !Files.isWritable(folder)) {
      throw fault("it may not be written to");
    }
  }

  /** Adds a file. */
  public void put(String name, byte[] content) {
    files.put(name, content);
  }

  /** Where a file of that name goes. */
  public Path path(String name) {
    return folder.resolve(name);
  }

  /** Where its files go. */
  public List<Path> paths() {
    return files.keySet().stream().map(folder::resolve).toList();
  }

  /** The files, as they will lie in the folder, that some other hand has put there. */
  public List<Path> strangers() {
    return paths().stream().filter(RunMark::isStranger).toList();
  }

  /** {@link Fault} when there are any. */
  public void refuseStrangers() {
    List<Path> strangers = strangers();
    if (!strangers.isEmpty()) {
      throw new Fault(
          Place.of(strangers.get(0).toString()),
          strangers.size() == 1
              ? "it was not written by this program"
              : "it and "
                  + (strangers.size() - 1)
                  + " more files to be written there are not by this program",
          "choose another folder, or say --replace to write over them");
    }
  }

  /**
   * Writes them all, or leaves the folder as it was and throws a {@link Fault}. Kinds of files that
   * have room for the mark are given it here.
   */
  public void write(RunMark mark) {
    List<Path> made = missing();
    Thread stop = new Thread(this::stop);
    Runtime.getRuntime().addShutdownHook(stop);
    boolean whole = false;
    try {
      make();
      files.forEach((name, content) -> lay(name, mark.in(name, content)));
      move();
      whole = true;
    } finally {
      takeAway();
      if (!whole) {
        made.forEach(FileSet::remove);
      }
      forget(stop);
    }
  }

  private void make() {
    try {
      Files.createDirectories(folder);
      WholeFile.clear(folder);
    } catch (IOException e) {
      throw fault("the folder cannot be made");
    }
  }

  private synchronized void lay(String name, byte[] content) {
    goOn();
    parts.add(new WholeFile(folder.resolve(name), content));
  }

  /** Not to be stopped: a signal waits until the set is complete. */
  private synchronized void move() {
    goOn();
    parts.forEach(WholeFile::move);
    leftOver().forEach(FileSet::remove);
  }

  /** Written by an earlier run and not by this one. */
  private List<Path> leftOver() {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(p -> members.matcher(p.getFileName().toString()).matches())
          .filter(p -> !files.containsKey(p.getFileName().toString()))
          .filter(p -> RunMark.of(p).isPresent())
          .toList();
    } catch (IOException e) {
      return List.of(); // a folder that may be written to but not be looked into
    }
  }

  private void goOn() {
    if (stopped) {
      throw fault("the run was stopped before anything was written");
    }
  }

  private synchronized void takeAway() {
    parts.forEach(WholeFile::close);
    parts.clear();
  }

  private synchronized void stop() {
    stopped = true;
    takeAway();
  }

  private static void forget(Thread stop) {
    try {
      Runtime.getRuntime().removeShutdownHook(stop);
    } catch (IllegalStateException e) {
      // the machine is shutting down: the hook has run or is waiting for us
    }
  }

  /** The folders that would have to be made, the innermost first. */
  private List<Path> missing() {
    List<Path> missing = new ArrayList<>();
    for (Path p = folder.toAbsolutePath();
        p != null && !Files.exists(p, LinkOption.NOFOLLOW_LINKS);
        p = p.getParent()) {
      missing.add(p);
    }
    return missing;
  }

  private static void remove(Path fileOrEmptyFolder) {
    try {
      Files.deleteIfExists(fileOrEmptyFolder);
    } catch (IOException e) {
      // somebody has put something there meanwhile, or holds on to it
    }
  }

  private Fault fault(String found) {
    return new Fault(Place.of(folder.toString()), found, "--out takes a folder to write to");
  }
}
