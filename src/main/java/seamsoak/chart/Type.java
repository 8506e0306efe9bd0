package seamsoak.chart;

import java.util.ArrayList;
import java.util.List;

/** Measures text and breaks it into lines. */
record Type(Typeface regular, Typeface heavy) {

  /** Read from the program once, when the first chart is drawn. */
  private static final class Packed {
    private static final Type TYPE = new Type(Typeface.regular(), Typeface.bold());
  }

  static Type load() {
    return Packed.TYPE;
  }

  Typeface face(boolean bold) {
    return bold ? heavy : regular;
  }

  double width(String text, double size, boolean bold) {
    return face(bold).width(text, size);
  }

  /** Whether the text goes into so many lines with nothing left out. */
  boolean fits(String text, double width, int most, double size, boolean bold) {
    List<String> lines = wrap(text, width, most, size, bold);
    return String.join(" ", lines).equals(String.join(" ", words(text)).replace('\u00A0', ' '));
  }

  /** Breaks between words; what is too long for a line or beyond the last ends in an ellipsis. */
  List<String> wrap(String text, double width, int most, double size, boolean bold) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words(text)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (line.isEmpty() || width(longer, size, bold) <= width) {
        line = longer;
      } else if (lines.size() == most - 1) {
        line = longer;
        break;
      } else {
        lines.add(cut(line, width, size, bold));
        line = word;
      }
    }
    lines.add(cut(line, width, size, bold));
    lines.replaceAll(each -> each.replace('\u00A0', ' '));
    return lines;
  }

  /** A number stays with its unit. */
  private static List<String> words(String text) {
    String glued = text.strip().replaceAll("(?<=\\d) (?=(F|C|min|h|mm|in|%)\\b)", "\u00A0");
    return List.of(glued.split("[ \\t\\r\\n]+"));
  }

  private String cut(String line, double width, double size, boolean bold) {
    if (width(line, size, bold) <= width) {
      return line;
    }
    int end = line.length();
    while (end > 1 && width(line.substring(0, end) + "…", size, bold) > width) {
      end = line.offsetByCodePoints(end, -1);
    }
    return line.substring(0, end).stripTrailing() + "…";
  }
}
