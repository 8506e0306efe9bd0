package seamsoak.report;

import java.util.List;

/** Sections as plain text, no line longer than a terminal is wide. */
final class Page {
  static final int WIDTH = 80;
  private static final String INDENT = "  ";

  private final StringBuilder text = new StringBuilder();

  /** Whether what follows belongs to the line above: a heading, or nothing yet. */
  private boolean headed = true;

  private Page() {}

  /** Sections one below the other. */
  static String of(List<Chapter> chapters) {
    Page page = new Page();
    for (Chapter chapter : chapters) {
      page.gap();
      page.headed = true;
      if (!chapter.title().isEmpty()) {
        page.heading(chapter.title());
      }
      chapter.parts().forEach(part -> part.on(page));
    }
    return page.text.toString();
  }

  /** A paragraph from the margin. */
  void say(String paragraph) {
    hang("", paragraph);
  }

  /** A heading with an empty line above. */
  void heading(String words) {
    gap();
    say(words);
    headed = true;
  }

  /** Sentences as a list. */
  void items(List<String> sentences) {
    sentences.forEach(s -> hang(INDENT + "- ", s));
  }

  /** A paragraph that begins a point of a list. */
  void point(String words) {
    hang(INDENT, words);
  }

  /** What is said below the beginning of a point. */
  void below(String words) {
    hang(INDENT + INDENT, words);
  }

  /** A table below its caption. */
  void table(Table table) {
    gap();
    if (!table.caption().isEmpty()) {
      say(table.caption());
    }
    table.lines().forEach(line -> line(INDENT + line));
  }

  /** A line as it is. */
  void line(String line) {
    text.append(line.stripTrailing()).append('\n');
    headed = false;
  }

  private void gap() {
    text.append(headed ? "" : "\n");
  }

  private void hang(String first, String paragraph) {
    String next = " ".repeat(first.length());
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : paragraph.strip().split("\\s+")) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(next);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    line(line.toString());
  }
}
