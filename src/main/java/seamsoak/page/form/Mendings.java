package seamsoak.page.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import seamsoak.data.JsonPath;
import seamsoak.data.Mistake;
import seamsoak.words.PageWords;
import seamsoak.words.Sentence;

/** What is wrong with a billet, each told once: at its field, else at its card, else above all. */
public final class Mendings {
  /**
   * A mistake as it is listed above the bench.
   *
   * @param id of what it is mended at
   * @param where that is, in words
   */
  public record Link(String id, String where, String sentence) {}

  private final List<Mistake> left;
  private final List<Link> told = new ArrayList<>();

  public Mendings(List<Mistake> all) {
    left = new ArrayList<>(all);
  }

  /** Those told so far. */
  public List<Link> told() {
    return List.copyOf(told);
  }

  /**
   * Those of a field.
   *
   * @param needed what is said of one that is blank and must not be; empty where it is not
   */
  public List<String> at(String path, String where, Optional<String> needed) {
    List<Mistake> mine = left.stream().filter(m -> m.field().equals(path)).toList();
    left.removeAll(mine);
    List<String> sentences =
        mine.stream().map(m -> needed.orElseGet(() -> sentence(m))).distinct().toList();
    sentences.forEach(s -> told.add(new Link(Field.id(path), where, s)));
    return sentences;
  }

  /**
   * Those of an object, and of whatever is in it that no field has told by now.
   *
   * @param outs whether what stands at a path may be taken out to mend it
   */
  public List<Card.Told> within(JsonPath object, String where, Predicate<String> outs) {
    String own = object.toString();
    Map<String, String> all = new LinkedHashMap<>();
    for (Mistake m : List.copyOf(left)) {
      String at = m.field();
      boolean mine =
          !own.isEmpty()
              && (at.equals(own) || at.startsWith(own + ".") || at.startsWith(own + "["));
      if (mine) {
        left.remove(m);
        all.putIfAbsent(sentence(m), !at.equals(own) && outs.test(at) ? at : "");
        told.add(new Link(Card.id(own), where, sentence(m)));
      }
    }
    return all.entrySet().stream().map(e -> new Card.Told(e.getKey(), e.getValue())).toList();
  }

  /** Those that nothing has told. */
  public List<String> others(boolean noSteps) {
    return left.stream()
        .map(m -> noSteps && m.field().equals("steps") ? PageWords.FIRST_STEP : sentence(m))
        .toList();
  }

  private static String sentence(Mistake m) {
    return Sentence.ended(Sentence.capital(m.said()));
  }
}
