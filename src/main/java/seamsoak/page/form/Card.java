package seamsoak.page.form;

import java.util.List;

/**
 * A card of the bench: one object of the file with its fields.
 *
 * @param path of the object
 * @param title what it is called
 * @param first fields that are always shown
 * @param more those that are folded away until they hold something
 * @param inside cards within it, such as the heats of a step
 * @param folded whether it is folded away as a whole until it holds something
 * @param faults what is wrong with it as a whole, or with what no field shows
 */
public record Card(
    String path,
    String title,
    List<Field> first,
    List<Field> more,
    List<Card> inside,
    boolean folded,
    List<Told> faults) {
  /**
   * Something that is wrong where there is no field for it.
   *
   * @param sentence what
   * @param out path of what may be taken out to mend it; empty where that would not help
   */
  public record Told(String sentence, String out) {}

  public Card {
    first = List.copyOf(first);
    more = List.copyOf(more);
    inside = List.copyOf(inside);
    faults = List.copyOf(faults);
  }

  public String id() {
    return id(path);
  }

  /** A field and a card may stand for one path: a kiln, or that there is none. */
  public static String id(String path) {
    return "in-" + Field.id(path);
  }

  public boolean hasMore() {
    return !more.isEmpty() || inside.stream().anyMatch(Card::folded);
  }

  /** Whether something is there that should be seen. */
  public boolean isBlank() {
    return first.stream().allMatch(Field::isBlank)
        && more.stream().allMatch(Field::isBlank)
        && inside.stream().allMatch(Card::isBlank)
        && faults.isEmpty();
  }

  public boolean opensMore() {
    return !more.stream().allMatch(Field::isBlank)
        || inside.stream().filter(Card::folded).anyMatch(c -> !c.isBlank());
  }
}
