package seamsoak.chart.figure;

import java.util.regex.Pattern;
import seamsoak.chart.Charts;

/** One chart's whole input. A figure holds numbers and words; it is drawn by {@link Charts}. */
public sealed interface Figure
    permits FaceFigure,
        FadingFigure,
        LogFigure,
        MatrixFigure,
        ScheduleFigure,
        SeamFigure,
        SectionFigure,
        SoakFigure {
  /** Starts every id in the SVG, so that several charts can stand in one page. */
  String id();

  /** What the chart shows. */
  String title();

  /** The answer in a few words, set large above the chart; may be empty. */
  String answer();

  /** The text alternative: what a reader who cannot see the chart needs, main numbers included. */
  String description();

  /** Checks what all figures share. */
  static void check(String id, String title, String description) {
    if (!Pattern.matches("[A-Za-z][A-Za-z0-9-]*", id)) {
      throw new IllegalArgumentException(
          "a chart id is letters, digits and hyphens after a letter, not '" + id + "'");
    }
    if (title.isBlank() || description.isBlank()) {
      throw new IllegalArgumentException("chart " + id + " needs a title and a description");
    }
  }

  /** Refuses what cannot be drawn, so that no NaN reaches a picture. */
  static void finite(double value, String what) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " is not a number: " + value);
    }
  }
}
