package seamsoak.chart;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import seamsoak.chart.figure.SoakFigure;

/**
 * What the axes of a soak chart run over.
 *
 * @param from lowest Celsius
 * @param to highest Celsius
 * @param least fewest minutes; shorter soaks are drawn here
 * @param most most minutes; longer soaks are drawn here
 */
record SoakScale(double from, double to, double least, double most, boolean shorter) {
  static final double DAY = 1440;

  static SoakScale of(SoakFigure figure) {
    double low = celsius(figure).min().orElse(0);
    double high = celsius(figure).max().orElse(0);
    double margin = high - low < 100 ? 50 : 0.04 * (high - low);
    double shortest = minutes(figure).filter(m -> m > 0).min().orElse(1);
    boolean beyondADay = figure.options().stream().anyMatch(o -> o.minutes().isEmpty());
    double longest = beyondADay ? DAY : minutes(figure).max().orElse(60);
    double least = Math.max(0.5, Math.min(1, shortest / 1.3));
    return new SoakScale(
        low - margin,
        high + margin,
        least,
        Math.max(30, Math.min(longest, DAY)) * 1.5,
        minutes(figure).anyMatch(m -> m < least));
  }

  private static DoubleStream celsius(SoakFigure figure) {
    return DoubleStream.concat(
        figure.options().stream().mapToDouble(SoakFigure.Option::celsius),
        DoubleStream.concat(
            figure.limits().stream().mapToDouble(SoakFigure.Limit::celsius),
            figure.pick().stream().mapToDouble(SoakFigure.Pick::celsius)));
  }

  private static DoubleStream minutes(SoakFigure figure) {
    DoubleStream options =
        figure.options().stream()
            .flatMap(o -> List.of(o.minutes(), o.minutesLow(), o.minutesHigh()).stream())
            .flatMapToDouble(minutes -> minutes.stream());
    return DoubleStream.concat(
        options,
        DoubleStream.concat(
            figure.most().stream(), figure.pick().stream().mapToDouble(SoakFigure.Pick::minutes)));
  }

  double clip(double minutes) {
    return Math.max(least, Math.min(minutes, most));
  }

  Axes times() {
    return Axes.durations(least, most, shorter);
  }

  /** Where minutes of an option are drawn; what is not known to end within a day, at the top. */
  Point2D at(SoakFigure.Option option, OptionalDouble minutes) {
    return new Point2D.Double(option.celsius(), clip(minutes.orElse(most)));
  }
}
