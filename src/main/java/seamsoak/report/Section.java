package seamsoak.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A section of the report.
 *
 * @param id its anchor
 * @param title its heading
 * @param parts in order
 */
record Section(String id, String title, List<Part> parts) {
  Section {
    parts = List.copyOf(parts);
  }

  static Section of(String id, String title) {
    return new Section(id, title, List.of());
  }

  Section with(Part part) {
    List<Part> more = new ArrayList<>(parts);
    more.add(part);
    return new Section(id, title, more);
  }

  Section words(String text) {
    return text.isBlank() ? this : with(new Part.Words(text));
  }

  Section head(String text) {
    return with(new Part.Head(text));
  }

  Section items(List<String> sentences) {
    return sentences.isEmpty() ? this : with(new Part.Items(sentences));
  }

  Section table(Table table) {
    return table.body().isEmpty() ? this : with(new Part.Grid(table));
  }

  Section terms(List<Part.Term> terms) {
    return terms.isEmpty() ? this : with(new Part.Terms(terms));
  }
}
