package seamsoak.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;

/** How a line of text is set; measures text and breaks it into lines. */
record Print(double size, boolean bold, Color color) {

  Print in(Color other) {
    return new Print(size, bold, other);
  }

  double width(String text) {
    return Typeface.of(bold).width(text, size);
  }

  /** From one baseline to the next. */
  double leading() {
    return size * 1.25;
  }

  /** Whether the text goes into so many lines with nothing left out. */
  boolean fits(String text, double width, int most) {
    List<String> lines = wrap(text, width, most);
    return String.join(" ", lines).equals(String.join(" ", words(text)).replace('\u00A0', ' '));
  }

  /** Breaks between words; what is too long for a line or beyond the last ends in an ellipsis. */
  List<String> wrap(String text, double width, int most) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words(text)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (line.isEmpty() || width(longer) <= width) {
        line = longer;
      } else if (lines.size() == most - 1) {
        line = longer;
        break;
      } else {
        lines.add(cut(line, width));
        line = word;
      }
    }
    lines.add(cut(line, width));
    lines.replaceAll(each -> each.replace('\u00A0', ' '));
    return lines;
  }

  /** A number stays with its unit. */
  private static List<String> words(String text) {
    String glued = text.strip().replaceAll("(?<=\\d) (?=(F|C|min|h|mm|in|%)\\b)", "\u00A0");
    return List.of(glued.split("[ \\t\\r\\n]+"));
  }

  private String cut(String line, double width) {
    if (width(line) <= width) {
      return line;
    }
    int end = line.length();
    while (end > 1 && width(line.substring(0, end) + "…") > width) {
      end = line.offsetByCodePoints(end, -1);
    }
    return line.substring(0, end).stripTrailing() + "…";
  }
}
