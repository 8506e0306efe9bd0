package seamsoak.chart;

/** A figure laid out on a page of its own, ready to be drawn. */
interface Drawing {
  double WIDTH = 960;

  double height();

  void draw(Canvas canvas);
}
