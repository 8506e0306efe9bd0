package seamsoak.report;

import java.util.ArrayList;
import java.util.List;

/**
 * What is said of one subject, for a terminal and for the report alike.
 *
 * @param id its anchor
 * @param title its heading; the answer itself has none
 * @param parts in order
 */
public record Chapter(String id, String title, List<Part> parts) {
  public Chapter {
    parts = List.copyOf(parts);
  }

  static Chapter of(String id, String title) {
    return new Chapter(id, title, List.of());
  }

  /** One without a heading. */
  static Chapter of(String id) {
    return of(id, "");
  }

  Chapter with(Part part) {
    List<Part> more = new ArrayList<>(parts);
    more.add(part);
    return new Chapter(id, title, more);
  }

  Chapter words(String text) {
    return text.isBlank() ? this : with(new Part.Words(text));
  }

  Chapter words(List<String> paragraphs) {
    return paragraphs.stream().reduce(this, Chapter::words, (a, b) -> b);
  }

  Chapter head(String text) {
    return with(new Part.Head(text));
  }

  Chapter items(List<String> sentences) {
    return items(sentences, sentences.size());
  }

  /** The first of some sentences, and how many there are besides. */
  Chapter items(List<String> sentences, int most) {
    int shown = Math.min(most, sentences.size());
    return sentences.isEmpty()
        ? this
        : with(new Part.Items(sentences.subList(0, shown), sentences.size() - shown));
  }

  Chapter table(Table table) {
    return table.rows() == 0 ? this : with(new Part.Grid(table, false));
  }

  /** A table that only a page has room for. */
  Chapter wide(Table table) {
    return table.rows() == 0 ? this : with(new Part.Grid(table, true));
  }

  Chapter terms(List<Part.Term> terms) {
    return terms.isEmpty() ? this : with(new Part.Terms(terms));
  }

  /**
   * What stays in one column: a heading with what it heads; before the first, whatever is there.
   */
  public List<List<Part>> groups() {
    List<List<Part>> groups = new ArrayList<>();
    for (Part part : parts) {
      if (groups.isEmpty() || part instanceof Part.Head) {
        groups.add(new ArrayList<>());
      }
      groups.get(groups.size() - 1).add(part);
    }
    return groups;
  }

  /** The sentences of its lists. */
  int sentences() {
    return parts.stream().mapToInt(p -> p instanceof Part.Items i ? i.sentences().size() : 0).sum();
  }

  /** The same without the last sentence of a list, which is counted instead. */
  Chapter shorter() {
    List<Part> fewer = new ArrayList<>(parts);
    for (int i = parts.size() - 1; i >= 0; i--) {
      if (parts.get(i) instanceof Part.Items list && list.sentences().size() > 1) {
        List<String> kept = list.sentences().subList(0, list.sentences().size() - 1);
        fewer.set(i, new Part.Items(kept, list.left() + 1));
        return new Chapter(id, title, fewer);
      }
    }
    return this;
  }

  /** Chapters one below the other as plain text. */
  static String page(List<Chapter> chapters) {
    Page page = new Page();
    for (Chapter chapter : chapters) {
      page.begin(chapter.title);
      chapter.parts.forEach(part -> part.on(page));
    }
    return page.toString();
  }
}
