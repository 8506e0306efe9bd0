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
 * The files that one run writes to a folder, and the list of them. All are on the disk, under other
 * names, before the first takes its place: a run that fails or is told to stop leaves the old set
 * as it was. The list with the old files and the new goes in first, the one with the new alone
 * last: one that is killed leaves whole files that are on the list, and the next run puts them
 * right. What earlier runs put there and this one has no more is taken away, so that the folder
 * tells of one run.
 */
public final class FileSet {
  private final Path folder;
  private final Pattern members;
  private final Map<String, byte[]> files = new LinkedHashMap<>();
  private final List<PartFile> parts = new ArrayList<>();
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
    if (name.equals(Manifest.NAME)) {
      throw new Fault(
          Place.of(path(name).toString()),
          "the list of what was written has that name",
          "choose another");
    }
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

  /** {@link Fault} when some other hand has put files there, or changed them. */
  public void refuseStrangers() {
    List<Path> strangers = strangers();
    if (!strangers.isEmpty()) {
      int more = strangers.size() - 1;
      throw new Fault(
          Place.of(strangers.get(0).toString()),
          more == 0
              ? "it was not written by this program, or was changed since"
              : "it and " + more + " more files there are not by this program, or changed since",
          "choose another place, or say --replace to write over what is there");
    }
  }

  private List<Path> strangers() {
    // a file that is already as it is going to be is no loss, whoever put it there
    List<String> ours = Manifest.in(folder).with(files).foundIn(folder).names();
    Stream<String> taken = files.keySet().stream().filter(name -> !ours.contains(name));
    return Stream.concat(taken, Stream.of(Manifest.NAME).filter(n -> Manifest.isTaken(folder)))
        .map(folder::resolve)
        .filter(Files::exists)
        .toList();
  }

  /**
   * Writes them all, or leaves the folder as it was and throws a {@link Fault}.
   *
   * @param program name and version of this program
   */
  public void write(String program) {
    List<Path> made = missing();
    Thread stop = new Thread(this::stop);
    Runtime.getRuntime().addShutdownHook(stop);
    boolean whole = false;
    try {
      make();
      Manifest before = Manifest.in(folder).foundIn(folder);
      List<String> gone = gone(before);
      lay(Manifest.NAME, before.with(files).bytes(program));
      files.forEach(this::lay);
      Manifest kept = before.without(gone).without(files.keySet());
      lay(Manifest.NAME, kept.with(files).bytes(program));
      move(gone);
      whole = true;
    } finally {
      takeAway();
      if (!whole) {
        made.forEach(FileSet::remove);
      }
      forget(stop);
    }
  }

  /** Written by an earlier run and not by this one. */
  private List<String> gone(Manifest before) {
    return before.names().stream()
        .filter(name -> members.matcher(name).matches() && !files.containsKey(name))
        .toList();
  }

  private void make() {
    try {
      Files.createDirectories(folder);
      PartFile.clear(folder);
    } catch (IOException e) {
      throw fault("the folder cannot be made");
    }
  }

  private synchronized void lay(String name, byte[] content) {
    goOn();
    parts.add(new PartFile(parts.size(), folder.resolve(name), content));
  }

  /** Not to be stopped: a signal waits until the set is complete. */
  private synchronized void move(List<String> gone) {
    goOn();
    parts.subList(0, parts.size() - 1).forEach(PartFile::move);
    gone.forEach(name -> remove(folder.resolve(name)));
    parts.get(parts.size() - 1).move();
  }

  private void goOn() {
    if (stopped) {
      throw fault("the run was stopped before anything was written");
    }
  }

  private synchronized void takeAway() {
    parts.forEach(PartFile::remove);
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
    return new Fault(Place.of(folder.toString()), found, "give a folder to write to");
  }
}
