package seamsoak.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** What a smith does to sections: welds, draws, grinds, restacks. */
record Bench(Furnace furnace) {
  /** Lines closer than this are one, m. */
  private static final double SAME = 1e-9;

  /**
   * Pieces laid together and welded: the first stay with the faces that are to meet covered, then
   * joined, the other stays as one.
   *
   * @param pieces by place across, then up
   * @param outer how open the outside is
   */
  Plate welded(Plate[][] pieces, Sides outer, Line joint, List<Stay> stays) {
    Plate[][] after = new Plate[pieces.length][pieces[0].length];
    for (int i = 0; i < pieces.length; i++) {
      for (int j = 0; j < pieces[i].length; j++) {
        Sides sides =
            new Sides(
                i == 0 ? outer.left() : Sides.COVERED,
                i == pieces.length - 1 ? outer.right() : Sides.COVERED,
                j == 0 ? outer.bottom() : Sides.COVERED,
                j == pieces[i].length - 1 ? outer.top() : Sides.COVERED);
        after[i][j] = furnace.heat(pieces[i][j], stays.get(0), sides).plate();
      }
    }
    Plate whole = joined(after, joint);
    return heated(whole, outer, stays.subList(1, stays.size()));
  }

  Plate heated(Plate plate, Sides outer, List<Stay> stays) {
    Plate p = plate;
    for (Stay stay : stays) {
      p = furnace.heat(p, stay, outer).plate();
    }
    return p;
  }

  /** Pieces joined to one section on common cells. */
  Plate joined(Plate[][] pieces, Line joint) {
    int across = pieces.length;
    int up = pieces[0].length;
    Plate whole = null;
    for (int i = 0; i < across; i++) {
      int column = i;
      Axis x = furnace.mesh().cells(common(up, j -> pieces[column][j].across()));
      Plate stack = null;
      for (int j = 0; j < up; j++) {
        int row = j;
        Axis y = furnace.mesh().cells(common(across, k -> pieces[k][row].up()));
        Plate piece = pieces[i][j].onto(x, y).exchanged();
        stack = stack == null ? piece : stack.beside(piece, joint);
      }
      Plate next = stack.exchanged();
      whole = whole == null ? next : whole.beside(next, joint);
    }
    return whole;
  }

  /** All lines of several axes of one length. */
  private static Axis common(int count, IntFunction<Axis> axes) {
    List<Double> at = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    double whole = axes.apply(0).metres();
    for (int k = 0; k < count; k++) {
      Axis axis = axes.apply(k);
      double[] places = axis.linePositions();
      double scale = whole / axis.metres();
      for (int l = 0; l < places.length; l++) {
        add(at, lines, places[l] * scale, axis.line()[l]);
      }
    }
    Axis all = null;
    for (int l = 0; l + 1 < at.size(); l++) {
      Axis block = Axis.of(at.get(l + 1) - at.get(l), lines.get(l), lines.get(l + 1));
      all = all == null ? block : all.followedBy(block, lines.get(l));
    }
    return all;
  }

  private static void add(List<Double> at, List<Line> lines, double place, Line line) {
    int k = 0;
    while (k < at.size() && at.get(k) < place - SAME) {
      k++;
    }
    if (k < at.size() && at.get(k) < place + SAME) {
      // the younger one asks for the finer cells
      lines.set(k, line.spread() < lines.get(k).spread() ? line : lines.get(k));
    } else {
      at.add(k, place);
      lines.add(k, line);
    }
  }

  /** Pieces of a bar side by side and one on another, every other one turned by a quarter. */
  static Plate[][] restacked(Plate bar, int across, int high, boolean alternate) {
    Plate turned = alternate ? bar.turned() : bar;
    Plate[][] pieces = new Plate[across][high];
    for (int i = 0; i < across; i++) {
      for (int j = 0; j < high; j++) {
        pieces[i][j] = (i + j) % 2 == 0 ? bar : turned;
      }
    }
    return pieces;
  }

  /** Drawn to a width and thickness, in equal logarithmic strains after each stay. */
  Plate drawn(Plate plate, Sides outer, double width, double thickness, List<Stay> stays) {
    Plate p = plate;
    for (int k = 0; k < stays.size(); k++) {
      p = furnace.heat(p, stays.get(k), outer).plate();
      double part = 1.0 / (stays.size() - k);
      p =
          p.scaled(
              Math.pow(width / p.across().metres(), part),
              Math.pow(thickness / p.up().metres(), part));
    }
    return p;
  }

  /** A depth ground off the right and off the top. */
  static Plate groundRightAndTop(Plate plate, double metres) {
    Plate right = plate.reversed().ground(metres).reversed();
    return right.exchanged().reversed().ground(metres).reversed().exchanged();
  }

  /** A depth ground off all sides. */
  static Plate ground(Plate plate, double metres) {
    Plate half = groundRightAndTop(plate, metres);
    return groundRightAndTop(half.turned().turned(), metres).turned().turned();
  }
}
