package seamsoak.report;

import java.util.List;

/** Plain text under way, no line longer than a terminal is wide. */
final class Page {
  static final int WIDTH = 80;
  private static final String INDENT = "  ";

  private final StringBuilder text = new StringBuilder();

  /** Whether what follows belongs to the line above: a heading, or nothing yet. */
  private boolean headed = true;

  /** What follows is of something else; a title is not always there. */
  void begin(String title) {
    gap();
    headed = true;
    if (!title.isEmpty()) {
      heading(title);
    }
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
    new PlainTable(table, WIDTH - INDENT.length()).lines().forEach(line -> line(INDENT + line));
  }

  /** A line as it is. */
  void line(String line) {
    text.append(line.stripTrailing()).append('\n');
    headed = false;
  }

  private void gap() {
    text.append(headed ? "" : "\n");
  }

  /** A paragraph whose lines stand below the end of what it begins with. */
  private void hang(String first, String paragraph) {
    String before = first;
    for (String words : PlainTable.wrapped(paragraph, WIDTH - first.length())) {
      line(before + words);
      before = " ".repeat(first.length());
    }
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
