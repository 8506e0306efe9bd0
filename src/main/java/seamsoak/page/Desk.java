package seamsoak.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import seamsoak.data.Fault;
import seamsoak.data.JsonPath;
import seamsoak.data.Place;
import seamsoak.data.UserFile;
import seamsoak.page.form.Acts;
import seamsoak.page.form.Editing;
import seamsoak.page.form.History;
import seamsoak.page.form.Kit;
import seamsoak.page.form.Proof;
import seamsoak.plan.Advice;
import seamsoak.words.PageWords;

/**
 * A billet on the page: its text as it was changed, and the file that it is kept in. Changes come
 * from any number of windows, one after the other.
 */
final class Desk {
  /** A changed field applies if it still holds what the window that sent it had shown. */
  record Done(boolean all, String notice) {
    static final Done WELL = new Done(true, "");
  }

  /** A text that something was recorded in, and what that was. */
  record Written(String text, String title) {}

  /**
   * As it is at one moment.
   *
   * @param file as it was when it was read or written last; empty where there is none yet
   * @param other whether another hand had changed the file by the time that it was read
   */
  record Now(History history, Optional<UserFile> file, boolean other, Proof proof) {
    boolean isSaved() {
      return file.isPresent() && file.get().text().equals(text());
    }

    /** Changes whenever text or file do. */
    int mark() {
      return 2 * number() + (isSaved() ? 1 : 0);
    }

    int number() {
      return history.now().number();
    }

    String text() {
      return history.now().text();
    }
  }

  /**
   * A plan that others are held against, for as long as the program runs.
   *
   * @param number of its text
   */
  record Kept(int number, String text, Advice advice) {}

  private static final String SAVED = "saved from the page";

  private final String id;
  private final Path path;
  private final Kit kit;
  private final Received received = new Received();
  private final Watch watch;
  private Now now;
  private Optional<Kept> kept = Optional.empty();

  /**
   * @param id by which the page calls it
   * @param path of its file, which need not be there yet
   * @param file as it was read, if it was there
   * @param text as it is by now; {@link Fault} where it is no JSON
   * @param other whether the file is another by now than that which was changed to the text
   */
  Desk(
      String id,
      Path path,
      Optional<UserFile> file,
      String text,
      boolean other,
      Kit kit,
      Watch watch) {
    this.watch = watch;
    this.id = id;
    this.path = path;
    this.kit = kit;
    Editing.of(text, kit.book());
    this.now = new Now(History.of(text), file, other, Proof.of(path, text, kit));
  }

  String id() {
    return id;
  }

  Path path() {
    return path;
  }

  /** Name of its file. */
  String file() {
    return path.getFileName().toString();
  }

  /** What it is called on the page. */
  String name() {
    return file().replaceFirst("\\.json$", "");
  }

  /** What was recorded in it. */
  Received received() {
    return received;
  }

  synchronized Now now() {
    return now;
  }

  synchronized Optional<Kept> kept() {
    return kept;
  }

  /** Keeps a plan to be held against, or none any more. */
  synchronized void keep(Optional<Kept> plan) {
    kept = plan;
  }

  /** Takes another text altogether: a change like others, which can be undone. */
  synchronized void becomes(String text) {
    take(now.history().changed(text));
  }

  Editing editing(Now at) {
    return Editing.of(at.text(), kit.book());
  }

  /**
   * Changes fields, and then does what a button says.
   *
   * @param number of the text that the window had shown
   * @param sent fields by their paths as they were sent; those that were not touched as well
   * @param act of a button; blank for none
   */
  synchronized Done change(int number, Map<String, String> sent, String act) {
    Optional<History.Revision> shown = now.history().at(number);
    if (shown.isEmpty()) {
      return new Done(false, PageWords.CHANGED_ELSEWHERE);
    }
    Editing before = Editing.of(shown.get().text(), kit.book());
    Editing after = editing(now);
    List<String> refused = new ArrayList<>();
    for (Map.Entry<String, String> field : before.touched(sent).entrySet()) {
      JsonPath path = JsonPath.of(field.getKey());
      String held = after.value(path).strip();
      if (held.equals(before.value(path).strip()) || held.equals(field.getValue())) {
        after = after.set(field.getKey(), field.getValue());
      } else {
        refused.add(PageWords.heldElsewhere(field.getKey(), held, field.getValue()));
      }
    }
    boolean stale = number != now.number();
    if (!refused.isEmpty() || stale && !act.isEmpty()) {
      take(now.history().changed(after.text()));
      return new Done(
          false, refused.isEmpty() ? PageWords.CHANGED_ELSEWHERE : String.join(" ", refused));
    }
    History changed = now.history().changed(after.text());
    take(
        switch (act) {
          case "" -> changed;
          case "undo" -> changed.undone();
          case "redo" -> changed.redone();
          default -> changed.changed(new Acts(after).done(act).text());
        });
    return Done.WELL;
  }

  /** Waits for a newer text than one, or for a time. */
  synchronized boolean isNewer(int than, long millis) throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
    long left = millis;
    while (now.number() <= than && left > 0) {
      wait(left);
      left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
    }
    return now.number() > than;
  }

  private void take(History history) {
    if (history != now.history()) {
      take(history, now.file(), now.other());
    }
  }

  /** Writes it to its file; {@link Fault} with nothing written where that cannot be done. */
  synchronized void save() {
    String text = now.text();
    UserFile file =
        now.file().isPresent()
            ? now.file().get().write(text, SAVED)
            : UserFile.create(file(), path, text);
    is(new Now(now.history(), Optional.of(file), false, now.proof()));
  }

  /** Whether another hand has changed its file since it was read here. */
  synchronized boolean isChangedBeside() {
    return now.other() || now.file().filter(UserFile::isChanged).isPresent();
  }

  /** Reads the file anew without looking at what is in it: what is here will be written over it. */
  synchronized void keepMine() {
    now = new Now(now.history(), Optional.of(Desks.read(path)), false, now.proof());
    save();
  }

  /** Takes what the file has by now as the newest text. */
  synchronized void takeTheirs() {
    UserFile theirs = Desks.read(path);
    Editing.of(theirs.text(), kit.book());
    take(now.history().changed(theirs.text()), Optional.of(theirs), false);
  }

  /**
   * Writes into the billet what was done or seen, and at once into its file where that has all else
   * of it; what somebody has changed on the bench and not saved stays unsaved, and this with it. If
   * the change cannot be made, nothing has happened.
   *
   * @param id of what was sent; what has come before is not taken once more
   * @param change gives the text and what to call it
   * @return whether it is new
   */
  synchronized boolean record(String id, Function<Now, Written> change) {
    if (received.has(id) || now.file().filter(f -> f.holds(id)).isPresent()) {
      return false;
    }
    follow();
    Written written = change.apply(now);
    if (!written.text().equals(now.text())) {
      Optional<UserFile> file =
          now.isSaved()
              ? Optional.of(now.file().get().write(written.text(), written.title(), id))
              : now.file();
      take(now.history().changed(written.text()), file, now.other());
    }
    received.add(id);
    if (!now.isSaved()) {
      watch.keep(this); // whoever sent it takes it for safe once it is answered
    }
    return true;
  }

  /** Takes what another hand has written, where there is nothing here that it would undo. */
  private void follow() {
    if (now.isSaved() && now.file().get().isChanged()) {
      takeTheirs();
    }
  }

  private void take(History history, Optional<UserFile> file, boolean other) {
    is(new Now(history, file, other, Proof.of(path, history.now().text(), kit)));
  }

  private void is(Now next) {
    now = next;
    notifyAll();
    watch.changed();
  }

  /** What was recorded last and can be taken back, if anything. */
  synchronized Optional<String> last() {
    try {
      return now.isSaved()
          ? now.file().get().last().filter(what -> !what.equals(SAVED))
          : Optional.empty();
    } catch (Fault notOurs) {
      return Optional.empty();
    }
  }

  /** Takes back what was recorded last; {@link Fault} where that cannot be done. */
  synchronized String takeBack(String what) {
    follow();
    if (!last().equals(Optional.of(what))) {
      throw new Fault(Place.of(name()), PageWords.CHANGED_ELSEWHERE, "");
    }
    UserFile.Undone undone = now.file().orElseThrow().undo();
    take(now.history().changed(undone.file().text()), Optional.of(undone.file()), now.other());
    return undone.what();
  }
}
