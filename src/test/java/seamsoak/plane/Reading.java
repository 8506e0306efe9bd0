package seamsoak.plane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Reads carbon off a plate, as wt% of one steel at equal activity.
 *
 * @param plate the section
 * @param steel whose percent is told
 */
record Reading(Plate plate, PlaneMetal steel) {
  /** Temperature at which activities are compared, K; it hardly matters which. */
  private static final double KELVIN = 1373.15;

  /** A place between the middles of two cells. */
  private record Between(int first, int second, double share) {
    static Between of(Axis axis, double metres) {
      int i = axis.cellAt(metres);
      double[] at = axis.positions();
      double middle = 0.5 * (at[i] + at[i + 1]);
      int k = i + (metres < middle ? -1 : 1);
      if (k < 0 || k >= axis.cells()) {
        return new Between(i, i, 0);
      }
      return new Between(i, k, (metres - middle) / (0.5 * (at[k] + at[k + 1]) - middle));
    }

    double of(IntToDoubleFunction value) {
      return (1 - share) * value.applyAsDouble(first) + share * value.applyAsDouble(second);
    }
  }

  /** Carbon in the face that a line of the axis up makes, at a place across. */
  double onLine(int line, double acrossMetres) {
    return Between.of(plate.across(), acrossMetres).of(i -> at(i, line));
  }

  private double at(int i, int line) {
    int face = plate.up().face()[line];
    int m = plate.up().cells();
    int above = face % m;
    int below = (face + m - 1) % m;
    return percent(between(i, below, above));
  }

  /** Activity in the face between two cells above one another. */
  private double between(int i, int below, int above) {
    double[] a = new double[2];
    double[] slope = new double[2];
    double[] half = new double[2];
    plate.metalOf(i, below).at(KELVIN).put(plate.at(i, below), 0, a, slope, half);
    plate.metalOf(i, above).at(KELVIN).put(plate.at(i, above), 1, a, slope, half);
    double first = 1 / (half[0] * plate.up().width()[below]);
    double second = 1 / (half[1] * plate.up().width()[above]);
    return (a[0] * first + a[1] * second) / (first + second);
  }

  private double percent(double activity) {
    return steel.percent(steel.at(KELVIN).ratioAt(activity));
  }

  double atPlace(double acrossMetres, double upMetres) {
    Between up = Between.of(plate.up(), upMetres);
    Between across = Between.of(plate.across(), acrossMetres);
    return up.of(j -> across.of(i -> ofCell(i, j)));
  }

  private double ofCell(int i, int j) {
    return percent(plate.metalOf(i, j).at(KELVIN).activity(plate.at(i, j)));
  }

  /** Carbon on the crossing of two lines: the mean of the four cells round it. */
  double crossing(int acrossLine, int upLine) {
    int face = plate.across().face()[acrossLine];
    double left = plate.across().width()[face - 1];
    double right = plate.across().width()[face];
    return (at(face - 1, upLine) * right + at(face, upLine) * left) / (left + right);
  }

  /** Mean over cells along a line of the axis up. */
  double meanOnLine(int line, double from, double to) {
    Axis axis = plate.across();
    int first = axis.cellAt(from);
    int last = axis.cellAt(to);
    double sum = 0;
    double metres = 0;
    for (int i = first; i <= last; i++) {
      sum += at(i, line) * axis.width()[i];
      metres += axis.width()[i];
    }
    return sum / metres;
  }

  /** The first line of an axis with a name. */
  static int line(Axis axis, String name) {
    return IntStream.range(0, axis.line().length)
        .filter(l -> axis.line()[l].name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** A place on a profile. */
  record Point(double metres, double percent) {}

  /**
   * Profile square to a line of the axis up, at a place across, from that line out to a distance on
   * its far side.
   */
  List<Point> profile(int line, double acrossMetres, double to) {
    Between across = Between.of(plate.across(), acrossMetres);
    List<Point> points = new ArrayList<>();
    points.add(new Point(0, onLine(line, acrossMetres)));
    int m = plate.up().cells();
    double x = 0;
    for (int k = 0; k < m && x < to; k++) {
      int j = (plate.up().face()[line] + k) % m;
      double w = plate.up().width()[j];
      points.add(new Point(x + 0.5 * w, across.of(i -> ofCell(i, j))));
      x += w;
    }
    return points;
  }

  /** Carbon on a profile, straight between its points. */
  static double percentAt(List<Point> profile, double metres) {
    int k = 0;
    while (k < profile.size() - 2 && profile.get(k + 1).metres() < metres) {
      k++;
    }
    Point a = profile.get(k);
    Point b = profile.get(k + 1);
    double share = (metres - a.metres()) / (b.metres() - a.metres());
    return a.percent() + share * (b.percent() - a.percent());
  }

  static double far(List<Point> profile) {
    return profile.stream().max(Comparator.comparingDouble(Point::percent)).get().percent();
  }

  /** Distance from the line at which half of the dip to the far carbon is left. */
  static double halfOfDip(List<Point> profile) {
    double half = 0.5 * (profile.get(0).percent() + far(profile));
    int k = 0;
    while (profile.get(k + 1).percent() < half) {
      k++;
    }
    Point a = profile.get(k);
    Point b = profile.get(k + 1);
    double share = (half - a.percent()) / (b.percent() - a.percent());
    return a.metres() + share * (b.metres() - a.metres());
  }
}
