package seamsoak.chart;

/**
 * One line of text.
 *
 * @param x where {@code anchor} stands
 * @param y the baseline
 */
record Letters(String text, double x, double y, Anchor anchor, Print print) {

  /** Which end of the text stands at x, by the SVG name. */
  enum Anchor {
    START("start", 0),
    MIDDLE("middle", 0.5),
    END("end", 1);

    final String svg;
    final double share;

    Anchor(String svg, double share) {
      this.svg = svg;
      this.share = share;
    }
  }

  double left() {
    return x - anchor.share * print.width(text);
  }
}
