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
public record Section(String id, String title, List<Part> parts) {
  public Section {
    parts = List.copyOf(parts);
  }

  static Section of(String id, String title) {
    return new Section(id, title, List.of());
  }

  /** One without a heading. */
  static Section of(String id) {
    return of(id, "");
  }

  Section with(Part part) {
    List<Part> more = new ArrayList<>(parts);
    more.add(part);
    return new Section(id, title, more);
  }

  Section words(String text) {
    return text.isBlank() ? this : with(new Part.Words(text));
  }

  Section words(List<String> paragraphs) {
    return paragraphs.stream().reduce(this, Section::words, (a, b) -> b);
  }

  Section head(String text) {
    return with(new Part.Head(text));
  }

  Section items(List<String> sentences) {
    return items(sentences, sentences.size());
  }

  /** The first of some sentences, and how many there are besides. */
  Section items(List<String> sentences, int most) {
    int shown = Math.min(most, sentences.size());
    return sentences.isEmpty()
        ? this
        : with(new Part.Items(sentences.subList(0, shown), sentences.size() - shown));
  }

  Section table(Table table) {
    return table.body().isEmpty() ? this : with(new Part.Grid(table, false));
  }

  /** A table that only a page has room for. */
  Section wide(Table table) {
    return table.body().isEmpty() ? this : with(new Part.Grid(table, true));
  }

  Section terms(List<Part.Term> terms) {
    return terms.isEmpty() ? this : with(new Part.Terms(terms));
  }

  /** The sentences of its lists. */
  int sentences() {
    return parts.stream().mapToInt(p -> p instanceof Part.Items i ? i.sentences().size() : 0).sum();
  }

  /** The same without the last sentence of a list, which is counted instead. */
  Section shorter() {
    List<Part> fewer = new ArrayList<>(parts);
    for (int i = parts.size() - 1; i >= 0; i--) {
      if (parts.get(i) instanceof Part.Items list && list.sentences().size() > 1) {
        List<String> kept = list.sentences().subList(0, list.sentences().size() - 1);
        fewer.set(i, new Part.Items(kept, list.left() + 1));
        return new Section(id, title, fewer);
      }
    }
    return this;
  }
}
