package seamsoak.page.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A billet's text as it was changed step by step. To undo and to redo are changes like others, so
 * that a number never stands for two texts.
 *
 * @param kept the last texts with their numbers, the newest last
 * @param back texts that undoing leads to, the nearest last
 * @param forth texts that redoing leads to, the nearest last
 */
public record History(List<Revision> kept, List<String> back, List<String> forth) {
  private static final int MOST = 200;

  /** A text, and the how-manieth it is. */
  public record Revision(int number, String text) {}

  public History {
    kept = List.copyOf(kept);
    back = List.copyOf(back);
    forth = List.copyOf(forth);
  }

  public static History of(String text) {
    return new History(List.of(new Revision(1, text)), List.of(), List.of());
  }

  public Revision now() {
    return kept.get(kept.size() - 1);
  }

  /** The text that had a number, if it is still known. */
  public Optional<Revision> at(int number) {
    return kept.stream().filter(r -> r.number() == number).findFirst();
  }

  public History changed(String text) {
    return text.equals(now().text())
        ? this
        : new History(next(text), more(back, now().text()), List.of());
  }

  public History undone() {
    return back.isEmpty()
        ? this
        : new History(next(last(back)), fewer(back), more(forth, now().text()));
  }

  public History redone() {
    return forth.isEmpty()
        ? this
        : new History(next(last(forth)), more(back, now().text()), fewer(forth));
  }

  private List<Revision> next(String text) {
    return more(kept, new Revision(now().number() + 1, text));
  }

  private static <T> List<T> more(List<T> list, T last) {
    List<T> all = new ArrayList<>(list.subList(Math.max(0, list.size() + 1 - MOST), list.size()));
    all.add(last);
    return all;
  }

  private static List<String> fewer(List<String> list) {
    return list.subList(0, list.size() - 1);
  }

  private static String last(List<String> list) {
    return list.get(list.size() - 1);
  }
}
