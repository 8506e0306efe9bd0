package seamsoak.face;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import seamsoak.billet.Billet;
import seamsoak.billet.SectionLine;
import seamsoak.billet.SectionLine.Kind;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Step;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.CarbonLaw;
import seamsoak.carbon.Metal;
import seamsoak.data.Fault;
import seamsoak.state.Limits;
import seamsoak.steel.Steel;

/**
 * Steel and carbon at every point of a billet's shown face: that of the layer that lies there,
 * multiplied by what each of the lines through the billet has left of it there (carbon where lines
 * cross is their product over the core's), each steel with its own at equal activity.
 *
 * <p>The face is shown ground below the skin that the fire has left on it, and without a jacket.
 */
public final class FaceField {
  private final Billet billet;
  private final List<Stage> stages;
  private final Workpiece piece;
  private final Shop shop;
  private final List<Steel> alloys;
  private final List<Metal> steels;
  private final int[] steelOfLayer;
  private final Whence whence;
  private final Layers layers;
  private final Profile width;
  private final Profile thickness;
  private final List<Tiled> tiled;
  private final boolean plan;
  private final double jacketAcross;
  private final double jacketUp;
  private final double halfWidth;
  private final double halfThickness;
  private final boolean oneSteel;
  private final double[] corePct;

  private FaceField(Billet billet, List<Stage> stages, Workpiece piece, Shop shop) {
    this.billet = billet;
    this.stages = stages;
    this.piece = piece;
    this.shop = shop;
    whence = Whence.of(billet, stages);
    alloys = billet.stack().steels().stream().distinct().toList();
    steels = alloys.stream().map(shop::metal).toList();
    oneSteel = alloys.size() == 1;
    steelOfLayer = new int[billet.stack().layers()];
    for (int i = 0; i < steelOfLayer.length; i++) {
      steelOfLayer[i] = alloys.indexOf(billet.stack().steel(i));
    }
    layers = Layers.of(billet.stack(), piece, 1 << whence.turnings());
    width = Profile.of(piece.width(), piece, steels);
    thickness = Profile.of(piece.thickness(), piece, steels);
    tiled = tiled();
    plan = !tiled.isEmpty();
    jacketAcross = piece.jacketMetres(piece.width());
    jacketUp = piece.jacketMetres(piece.thickness());
    halfWidth = piece.bodySize().widthMetres() / 2;
    halfThickness = piece.bodySize().thicknessMetres() / 2;
    corePct = corePct();
  }

  /** The metal that is shown. */
  public Workpiece piece() {
    return piece;
  }

  /** The same face after heats that came then. */
  public FaceField after(UnaryOperator<Workpiece> heats) {
    return new FaceField(billet, stages, heats.apply(piece), shop);
  }

  /** Of each steel, with the core's activity. */
  private double[] corePct() {
    double kelvin = CarbonLaw.COMPARED_AT_KELVIN;
    CarbonLaw.Isotherm body = piece.body().law().at(kelvin);
    return steels.stream()
        .mapToDouble(
            m ->
                m.equals(piece.body())
                    ? m.percent(piece.coreRatio())
                    : m.percent(m.law().at(kelvin).ratioBeside(body, piece.coreRatio())))
        .toArray();
  }

  /**
   * The shown face of a piece.
   *
   * @param stages of the billet up to the last step that moved metal
   * @param piece the metal after them, or after heats that came then; its faces welded
   */
  public static FaceField of(Billet billet, List<Stage> stages, Workpiece piece, Shop shop) {
    if (piece.hasLooseFaces()) {
      int last = stages.size() - 1;
      throw new Fault(
          last == 0 ? billet.stack().place() : billet.steps().get(last - 1).place(),
          "there is no face to draw yet: what "
              + (last == 0 ? "the stack" : billet.steps().get(last - 1).title())
              + " lays together is not welded",
          "ask for it after the weld");
    }
    return new FaceField(billet, stages, piece, shop);
  }

  private List<Tiled> tiled() {
    List<SectionLine> lines = piece.inner().stream().filter(l -> l.kind() == Kind.TILE).toList();
    List<Tiled> all = new ArrayList<>();
    int next = 0;
    for (int turnings : whence.turnedAfterTiling()) {
      List<Tiled.Way> ways = new ArrayList<>();
      for (int way = 0; way < 1 << turnings; way++) {
        ways.add(tileWay(lines.get(next++)));
      }
      all.add(new Tiled(ways, (1 << turnings) - 1));
    }
    return all;
  }

  private Tiled.Way tileWay(SectionLine line) {
    return new Tiled.Way(
        Profile.of(line, piece, steels),
        Profile.begins(line),
        Profile.period(line),
        Seams.inTile(line));
  }

  /** Whether the top of a billet of tiles is shown; else the end of the bar. */
  public boolean isPlan() {
    return plan;
  }

  /** From left to right, m: along the billet, or across the end of the bar. */
  public double acrossMetres() {
    return plan ? piece.size().lengthMetres() - 2 * jacketUp : 2 * halfWidth;
  }

  /** From bottom to top, m. */
  public double upMetres() {
    return 2 * (plan ? halfWidth : halfThickness);
  }

  /** Whether the face of a billet with these steps can be drawn: a twisted one has no flat one. */
  public static boolean isFlat(Billet billet) {
    return billet.steps().stream().noneMatch(s -> s.kind() == Step.Kind.TWIST);
  }

  /** Half the thickness: how far the shown face of tiles lies from the middle, m. */
  public double halfThicknessMetres() {
    return halfThickness;
  }

  /** The steels of the stack, in the order of their numbers. */
  public List<Metal> steels() {
    return steels;
  }

  /** The steel of a layer of the stack. */
  String nameOf(int layer) {
    return steels.get(steelOfLayer[layer]).name();
  }

  /** The same with all that is known of them. */
  List<Steel> alloys() {
    return alloys;
  }

  /** Carbon of a steel far from any seam: the mean of its layers, wt%. */
  double farPct(int steel) {
    return Limits.carbonPct(alloys.get(steel), piece);
  }

  /** Where its seams lie. */
  FaceSeams seams() {
    return new FaceSeams(
        piece, whence, tiled, plan, jacketAcross + halfWidth, jacketUp + halfThickness);
  }

  /** Looks at one point after another; of one thread. */
  public final class Look {
    private final Spot spot = new Spot(whence.tilings());

    /** By line, the cell where it was last looked at: the next point mostly lies there too. */
    private final int[] found = new int[2 + whence.tilings()];

    private int steel;
    private double percent;
    private double carbon;
    private double left;

    /** Which steel, of {@link FaceField#steels}. */
    public int steel() {
      return steel;
    }

    /** Which layer of the stack, from its top. */
    int ofStack() {
      return spot.layer;
    }

    /** Its carbon, wt%. */
    public double percent() {
      return percent;
    }

    /**
     * A point of the shown face.
     *
     * @param x from its middle to the right, m
     * @param y from its middle upward, m
     */
    public void at(double x, double y) {
      if (plan) {
        inside(x, y, halfThicknessMetres());
      } else {
        inside(0, x, y);
      }
    }

    /** A point at any depth, each from the middle, m. */
    public void inside(double along, double across, double up) {
      whence.find(spot, along, across, up);
      steel = steelOfLayer[spot.layer];
      carbon = Double.NaN;
      left = 1;
      double fromSide = jacketAcross + halfWidth + across;
      double fromTop = jacketUp + halfThickness - up;
      if (plan) {
        takes(0, width, fromSide, 2 * (jacketAcross + halfWidth) - fromSide, width, spot.onEdge);
        for (int i = 0; i < tiled.size(); i++) {
          Tiled.Way way = tiled.get(i).of(spot.way);
          Profile tile = way.profile();
          takes(i + 1, tile, way.at(spot.down[i]), way.at(1 - spot.down[i]), tile, !spot.onEdge);
        }
      } else {
        takes(0, width, fromSide, 2 * halfWidth - fromSide, thickness, spot.onEdge);
        takes(1, thickness, fromTop, 2 * halfThickness - fromTop, width, !spot.onEdge);
      }
      percent = left * (Double.isNaN(carbon) ? layer() : carbon);
    }

    /** Carbon that the layer has far from the seams of the billet, wt%. */
    private double layer() {
      return layers.tells(spot.layer)
          ? layers.percent(spot.layer, spot.inLayer, spot.way)
          : corePct[steel];
    }

    /**
     * What a line has to say of this place. Where every other piece is turned the line stands for
     * one row of them; the next row lies the other way round, so it is told by the line from its
     * other end, or where that is the same by the one through the rows, which begins with the other
     * kind of piece.
     *
     * @param which line, from 0
     * @param mirror as far from the other end of the line
     * @param beside the line through the rows, if as many pieces lie on it
     * @param through whether layers lie across the line here, and so may be told one by one
     */
    private void takes(
        int which, Profile line, double metres, double mirror, Profile beside, boolean through) {
      int cell = line.cell(metres, found[which]);
      found[which] = cell;
      if (oneSteel || line.isLayered(cell) == through) {
        takes(line, cell, metres, through);
        return;
      }
      int other = line.cell(mirror);
      if (line.isLayered(other) == through) {
        takes(line, other, mirror, through);
        return;
      }
      double there = metres * beside.metres() / line.metres();
      int turned = line.hasAsManyAs(beside) ? beside.cell(there) : -1;
      if (turned >= 0 && beside.isLayered(turned) == through) {
        takes(beside, turned, there, through);
      } else {
        takes(line, cell, metres, through);
      }
    }

    private void takes(Profile line, int cell, double metres, boolean through) {
      int own = line.steel(cell);
      if (through && own >= 0 && !oneSteel && Double.isNaN(carbon)) {
        steel = own;
        carbon = line.percent(cell, metres);
      } else {
        left *= line.share(cell, metres);
      }
    }
  }
}
