package seamsoak.report;

import java.util.List;

/** A piece of a chapter. */
sealed interface Part {
  /** Sets it on a page of plain text. */
  void on(Page page);

  /** A paragraph. */
  record Words(String text) implements Part {
    @Override
    public void on(Page page) {
      page.say(text);
    }
  }

  /** A heading within a chapter. */
  record Head(String text) implements Part {
    @Override
    public void on(Page page) {
      page.heading(text);
    }
  }

  /**
   * Sentences as a list.
   *
   * @param left how many more there are
   */
  record Items(List<String> sentences, int left) implements Part {
    @Override
    public void on(Page page) {
      page.items(sentences);
      if (left > 0) {
        page.items(List.of("and " + left + " more"));
      }
    }
  }

  /** Lines that stand as they are; the report has none. */
  record Lines(List<String> lines) implements Part {
    @Override
    public void on(Page page) {
      lines.forEach(page::line);
    }
  }

  /** A chart as SVG, to be set as it is; a terminal shows none. */
  record Picture(String svg) implements Part {
    @Override
    public void on(Page page) {}
  }

  /**
   * A table.
   *
   * @param wide too wide for a terminal
   */
  record Grid(Table table, boolean wide) implements Part {
    @Override
    public void on(Page page) {
      if (!wide) {
        page.table(table);
      }
    }
  }

  /** Words with what is said of each. */
  record Terms(List<Term> terms) implements Part {
    @Override
    public void on(Page page) {
      for (Term term : terms) {
        page.point(term.word());
        term.said().forEach(page::below);
      }
    }
  }

  /** A word, and sentences on it. */
  record Term(String word, List<String> said) {}
}
