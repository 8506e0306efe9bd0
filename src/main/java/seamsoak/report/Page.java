package seamsoak.report;

import java.util.List;

/** Builds a page of plain text, no line longer than a terminal is wide. */
final class Page {
  static final int WIDTH = 80;
  private static final String INDENT = "  ";

  private final StringBuilder text = new StringBuilder();

  /** A paragraph from the margin. */
  Page say(String paragraph) {
    return hang("", paragraph);
  }

  /** A heading with an empty line above. */
  Page heading(String words) {
    if (!text.isEmpty()) {
      text.append('\n');
    }
    return say(words);
  }

  /** Sentences as a list. */
  Page items(List<String> sentences) {
    sentences.forEach(s -> hang(INDENT + "- ", s));
    return this;
  }

  /** A word and what is said of it, further lines indented under the latter. */
  Page item(String word, int wordWidth, String said) {
    return hang(INDENT + Table.pad(word, wordWidth) + INDENT, said);
  }

  /** A table below its caption; nothing when it has no rows. */
  Page table(Table table) {
    if (table.body().isEmpty()) {
      return this;
    }
    if (!table.caption().isEmpty()) {
      say(table.caption());
    }
    table.lines().forEach(line -> text.append((INDENT + line).stripTrailing()).append('\n'));
    return this;
  }

  /** Another page below an empty line; nothing when it is empty. */
  Page then(String page) {
    if (!page.isEmpty()) {
      text.append(text.isEmpty() ? "" : "\n").append(page);
    }
    return this;
  }

  /** A paragraph that begins a point of a list. */
  Page point(String words) {
    return hang(INDENT, words);
  }

  /** What is said below the beginning of a point. */
  Page below(String words) {
    return hang(INDENT + INDENT, words);
  }

  private Page hang(String first, String paragraph) {
    String next = " ".repeat(first.length());
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : paragraph.strip().split("\\s+")) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        text.append(line).append('\n');
        line = new StringBuilder(next);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    text.append(line).append('\n');
    return this;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
