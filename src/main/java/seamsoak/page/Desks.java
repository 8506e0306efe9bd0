package seamsoak.page;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import seamsoak.data.Fault;
import seamsoak.data.Place;
import seamsoak.data.UserFile;
import seamsoak.page.form.Kit;
import seamsoak.words.PageWords;

/** The billets that were opened, and their drafts. */
final class Desks implements AutoCloseable, Watch {
  private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N} ._-]{1,80}");

  /** Names that Windows keeps for its devices, with whatever ending. */
  private static final Pattern DEVICE =
      Pattern.compile("(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9])(\\..*)?");

  private final Path folder;
  private final Kit kit;
  private final Drafts drafts;
  private final Bell bell;
  private final Map<String, Desk> all = new LinkedHashMap<>();
  private final Map<String, Integer> kept = new LinkedHashMap<>();
  private final ScheduledExecutorService keeper =
      Executors.newSingleThreadScheduledExecutor(Desks::thread);
  private int last;

  /**
   * @param bell rung whenever one of them is otherwise
   */
  Desks(Path folder, Kit kit, Drafts drafts, Bell bell) {
    this.bell = bell;
    this.folder = folder;
    this.kit = kit;
    this.drafts = drafts;
    drafts.of(folder).forEach(this::restore);
    keeper.scheduleWithFixedDelay(this::keep, 1, 1, TimeUnit.SECONDS);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "drafts");
    thread.setDaemon(true);
    return thread;
  }

  private void restore(Drafts.Draft draft) {
    try {
      Optional<UserFile> file =
          Files.exists(draft.file()) ? Optional.of(read(draft.file())) : Optional.empty();
      boolean other = file.isPresent() && !Drafts.digest(file.get().text()).equals(draft.base());
      Desk desk = add(new Desk(next(), draft.file(), file, draft.text(), other, kit, this));
      draft.sent().forEach(desk.received()::add);
    } catch (Fault unreadable) {
      // it stays where it is, for another time
    }
  }

  private synchronized String next() {
    return "" + ++last;
  }

  private synchronized Desk add(Desk desk) {
    all.put(desk.id(), desk);
    return desk;
  }

  static UserFile read(Path file) {
    return UserFile.read(file.getFileName().toString(), file);
  }

  synchronized Optional<Desk> find(String id) {
    return Optional.ofNullable(all.get(id));
  }

  /** The one at which a file lies, if it was opened. */
  synchronized Optional<Desk> of(String fileName) {
    return all.values().stream()
        .filter(d -> d.path().getFileName().toString().equals(fileName))
        .findFirst();
  }

  synchronized List<Desk> all() {
    return List.copyOf(all.values());
  }

  /** Opens a file of the folder; {@link Fault} where it cannot be read. */
  synchronized Desk open(String fileName) {
    Optional<Desk> there = of(fileName);
    if (there.isPresent()) {
      return there.get();
    }
    UserFile file = read(folder.resolve(fileName));
    return add(
        new Desk(
            next(), folder.resolve(fileName), Optional.of(file), file.text(), false, kit, this));
  }

  /** Begins a billet that is in no file yet; {@link Fault} where the name will not do. */
  synchronized Desk begin(String name, String text) {
    Path file = folder.resolve(fileName(name));
    if (isTaken(file)) {
      throw new Fault(Place.of(name), PageWords.taken(name), "");
    }
    return add(new Desk(next(), file, Optional.empty(), text, false, kit, this));
  }

  private boolean isTaken(Path file) {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS)
        || all.values().stream().anyMatch(d -> d.path().equals(file));
  }

  /** A name that no billet has yet. */
  synchronized String free(String wanted) {
    for (int i = 1; ; i++) {
      String name = i == 1 ? wanted : wanted + " " + i;
      if (!isTaken(folder.resolve(fileName(name)))) {
        return name;
      }
    }
  }

  /** The file of a billet of that name, in this folder and no other. */
  static String fileName(String name) {
    String file = name.strip();
    boolean good =
        NAME.matcher(file).matches()
            && !file.startsWith(".")
            && !file.endsWith(".")
            && !DEVICE.matcher(file).matches();
    if (!good) {
      throw new Fault(Place.of(name), PageWords.badName(), "");
    }
    return file + ".json";
  }

  /** Forgets a billet with what was not saved of it. */
  synchronized void drop(Desk desk) {
    all.remove(desk.id());
    kept.remove(desk.id());
    drafts.drop(desk.path());
  }

  /** Keeps what was changed since it was kept last, and drops drafts of what was saved. */
  private void keep() {
    all().forEach(this::keep);
  }

  @Override
  public void changed() {
    bell.ring();
  }

  @Override
  public void keep(Desk desk) {
    Desk.Now now = desk.now();
    List<String> sent = desk.received().last();
    synchronized (this) {
      int had = kept.getOrDefault(desk.id(), -1);
      if (!all.containsKey(desk.id()) || had == now.mark() || had / 2 > now.number()) {
        return; // another may have kept a newer one since this was looked at
      }
      kept.put(desk.id(), now.mark());
      if (now.isSaved()) {
        drafts.drop(desk.path());
      } else {
        String base = now.file().map(f -> Drafts.digest(f.text())).orElse("");
        drafts.keep(new Drafts.Draft(desk.path(), base, now.text(), sent));
      }
    }
  }

  boolean hasUnsaved() {
    return all().stream().anyMatch(d -> !d.now().isSaved());
  }

  @Override
  public void close() {
    keeper.shutdown();
    keep();
  }
}
