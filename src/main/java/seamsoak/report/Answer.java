package seamsoak.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An answer in words.
 *
 * @param all of it
 * @param brief what is read at once, in each list the weightiest first
 */
public record Answer(List<Section> all, List<Section> brief) {
  /** What a terminal shows at once. */
  static final int LINES = 30;

  public Answer {
    all = told(all);
    brief = told(brief);
  }

  /** One that is short enough as it is. */
  static Answer of(List<Section> sections) {
    return new Answer(sections, sections);
  }

  private static List<Section> told(List<Section> sections) {
    return sections.stream().filter(s -> !s.parts().isEmpty()).toList();
  }

  /** All of it. */
  public String full() {
    return Page.of(all);
  }

  /**
   * As much as a terminal shows at once: the longest list loses its end, and says so, until the
   * rest fits.
   *
   * @param below what stands below it as it is
   */
  public String brief(String below) {
    List<Section> kept = new ArrayList<>(brief);
    while (true) {
      String text = Page.of(kept);
      int longest =
          IntStream.range(0, kept.size())
              .filter(i -> kept.get(i).spare() > 0)
              .boxed()
              .max(Comparator.comparing(i -> lines(Page.of(List.of(kept.get(i))))))
              .orElse(-1);
      if (lines(text + below) <= LINES || longest < 0) {
        return text;
      }
      kept.set(longest, kept.get(longest).shorter());
    }
  }

  /** Lines on a terminal, which breaks what is wider. */
  private static int lines(String text) {
    return text.lines()
        .mapToInt(l -> Math.max(1, (l.length() + Page.WIDTH - 1) / Page.WIDTH))
        .sum();
  }
}
