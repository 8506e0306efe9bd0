package seamsoak.heatlog;

/** Some lines of a log to tell its layout by. */
final class LogSample {
  /** Enough for any head, and to see what most rows are like. */
  static final int FIRST_LINES = 400;

  private static final int LATER_LINES = 2000;

  private LogSample() {}

  /** The first lines, and later ones evenly spread. */
  static String of(String content) {
    StringBuilder sample = new StringBuilder();
    int lines = 0;
    int at = 0;
    while (at < content.length() && lines < FIRST_LINES) {
      int end = endOfLine(content, at);
      sample.append(content, at, end);
      at = end;
      lines++;
    }
    int stride = Math.max(1, (content.length() - at) / LATER_LINES);
    while (at < content.length()) {
      int end = endOfLine(content, at);
      sample.append(content, at, end);
      at = end == content.length() ? end : Math.max(end, startOfLine(content, at + stride));
    }
    return sample.toString();
  }

  private static int endOfLine(String content, int at) {
    int end = at;
    while (end < content.length() && "\r\n".indexOf(content.charAt(end)) < 0) {
      end++;
    }
    boolean two = content.startsWith("\r\n", end);
    return Math.min(content.length(), end + (two ? 2 : 1));
  }

  private static int startOfLine(String content, int at) {
    return at >= content.length() ? content.length() : endOfLine(content, at - 1);
  }
}
