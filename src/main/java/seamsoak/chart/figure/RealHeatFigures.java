package seamsoak.chart.figure;

import java.util.ArrayList;
import java.util.List;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.chart.figure.ScheduleFigure.Corner;
import seamsoak.heatlog.LogCurve;
import seamsoak.heatlog.RealHeat;
import seamsoak.unit.UnitSystem;
import seamsoak.words.HeatWords;

/** Puts a real heat into a {@link LogFigure}. */
public record RealHeatFigures(RealHeat heat, UnitSystem units) {
  /** More marks than that say no more. */
  private static final int MOST_MARKS = 200;

  public Figure figure() {
    HeatWords words = new HeatWords(units);
    List<LogFigure.Curve> curves = new ArrayList<>();
    boolean air = heat.query().tip().filter(t -> t == Tip.AIR).isPresent();
    curves.add(new LogFigure.Curve(air ? "the air, as read" : "as read", pieces()));
    if (air) {
      curves.add(new LogFigure.Curve("middle of the piece", List.of(corners(heat.piece()))));
    }
    List<LogFigure.Span> blank = new ArrayList<>();
    double start = heat.curve().startMinute();
    double end = heat.curve().endMinute();
    double last = heat.log().readings().lastSeconds() / 60;
    if (start > 0) {
      blank.add(new LogFigure.Span(0, start));
    }
    heat.curve().gaps().forEach(g -> blank.add(new LogFigure.Span(g.fromMinute(), g.toMinute())));
    if (end < last) {
      blank.add(new LogFigure.Span(end, last));
    }
    List<LogFigure.Level> levels = new ArrayList<>();
    levels.add(new LogFigure.Level("austenite from", heat.startC()));
    if (heat.plannedC() > heat.startC()) {
      levels.add(new LogFigure.Level(heat.held() ? "held" : "planned", heat.plannedC()));
    }
    return new LogFigure(
        "heat",
        "A real heat of " + heat.query().steel().id(),
        words.worth(heat),
        String.join(
            " ", words.worth(heat), words.course(heat), String.join(" ", words.leftOut(heat))),
        units,
        curves,
        heat.in().leftOut().stream()
            .filter(l -> !Double.isNaN(l.celsius()))
            .limit(MOST_MARKS)
            .map(l -> new Corner(l.seconds() / 60, l.celsius()))
            .toList(),
        blank,
        levels);
  }

  private static List<Corner> corners(List<LogCurve.Point> points) {
    return points.stream().map(p -> new Corner(p.minute(), p.celsius())).toList();
  }

  /** Apart where there are gaps. */
  private List<List<Corner>> pieces() {
    List<List<Corner>> pieces = new ArrayList<>();
    List<Corner> piece = new ArrayList<>();
    int gap = 0;
    for (LogCurve.Point p : heat.curve().points()) {
      piece.add(new Corner(p.minute(), p.celsius()));
      if (gap < heat.curve().gaps().size()
          && heat.curve().gaps().get(gap).fromMinute() == p.minute()) {
        pieces.add(piece);
        piece = new ArrayList<>();
        gap++;
      }
    }
    pieces.add(piece);
    return pieces;
  }
}
