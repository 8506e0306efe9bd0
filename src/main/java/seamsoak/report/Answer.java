package seamsoak.report;

import java.util.ArrayList;
import java.util.List;

/**
 * An answer in words.
 *
 * @param all of it
 * @param brief what is read at once, in each list the weightiest first
 */
public record Answer(List<Chapter> all, List<Chapter> brief) {
  /** What a terminal shows at once. */
  static final int LINES = 30;

  public Answer {
    all = told(all);
    brief = told(brief);
  }

  /** One that is short enough as it is. */
  static Answer of(List<Chapter> chapters) {
    return new Answer(chapters, chapters);
  }

  private static List<Chapter> told(List<Chapter> chapters) {
    return chapters.stream().filter(s -> !s.parts().isEmpty()).toList();
  }

  /** All of it. */
  public String full() {
    return Chapter.page(all);
  }

  /**
   * As much as a terminal shows at once: from the last list on, each loses its end, and says so,
   * down to two sentences, until the rest fits.
   *
   * @param below what stands below it as it is
   */
  public String brief(String below) {
    List<Chapter> kept = new ArrayList<>(brief);
    for (int least : new int[] {2, 1}) {
      for (int i = kept.size() - 1; i >= 0; i--) {
        while (lines(Chapter.page(kept) + below) > LINES && kept.get(i).sentences() > least) {
          kept.set(i, kept.get(i).shorter());
        }
      }
    }
    return Chapter.page(kept);
  }

  /** Lines on a terminal, which breaks what is wider. */
  private static int lines(String text) {
    return text.lines()
        .mapToInt(l -> Math.max(1, (l.length() + Page.WIDTH - 1) / Page.WIDTH))
        .sum();
  }
}
