package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Line;
import seamsoak.carbon.Metal;
import seamsoak.data.Fault;
import seamsoak.heat.HeatCurve;
import seamsoak.steel.Steel;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/**
 * Walks a billet through its steps: a fold that carries size and carbon from one to the next. Steps
 * that cannot be done are refused with a {@link Fault} at their place.
 */
public final class BilletWalk {
  private static final double SAME = 1e-6;

  /** Share of the dip that shows below which a line is gone for good. */
  private static final double WELL_BELOW = 0.8;

  /** Each turning of every other piece doubles them; shops stop at some dozens. */
  private static final int MOST_LINES = 1000;

  private final Shop shop;
  private final boolean linesOnly;

  public BilletWalk(Shop shop) {
    this(shop, false);
  }

  private BilletWalk(Shop shop, boolean linesOnly) {
    this.shop = shop;
    this.linesOnly = linesOnly;
  }

  /**
   * A walk that follows no more than the lines need: the layers are left out once the lines between
   * them are well below what shows, since inside the metal a line only fades. What lines still show
   * come out as in a full walk.
   */
  public static BilletWalk ofLines(Shop shop) {
    return new BilletWalk(shop, true);
  }

  /** The billet as laid and after each step. */
  public List<Stage> walk(Billet billet) {
    List<Stage> stages = new ArrayList<>();
    Workpiece laid = new Laying(shop).of(billet.stack());
    stages.add(new Stage(0, "stack", laid, Optional.empty(), Shop.BLACK_KELVIN, 0, 0, List.of()));
    for (Step step : billet.steps()) {
      Stage before = stages.get(stages.size() - 1);
      try {
        Stage after = after(step, before, billet.stack().units());
        stages.add(linesOnly ? after.withPiece(forLines(after.piece())) : after);
      } catch (IllegalArgumentException e) {
        throw new Fault(
            step.place(), step.title() + " cannot be done: " + e.getMessage(), "change the step");
      }
    }
    return List.copyOf(stages);
  }

  private Workpiece forLines(Workpiece piece) {
    double least = WELL_BELOW * shop.assumptions().visibleDipPct();
    return piece.withInner(
        all ->
            all.stream()
                .filter(l -> l.kind() != SectionLine.Kind.LAYERS || mayShow(l, least))
                .toList());
  }

  private static boolean mayShow(SectionLine layers, double leastPct) {
    return layers.parts().size() > 1
        || layers.near() == SectionLine.End.GAP
        || layers.strip().planes().stream()
            .anyMatch(p -> Line.of(layers.strip(), p).depthPct() >= leastPct);
  }

  private Stage after(Step step, Stage before, UnitSystem units) {
    Workpiece piece = before.piece();
    if (piece.hasLooseFaces() && !(step instanceof Step.Weld)) {
      throw new IllegalArgumentException("the new faces must be welded first");
    }
    Progress p = new Progress(before, units);
    if (step instanceof Step.Weld s) {
      weld(p, s);
    } else if (step instanceof Step.Draw s) {
      draw(p, s);
    } else if (step instanceof Step.Press s) {
      press(p, s);
    } else if (step instanceof Step.Roll s) {
      thinner(p, s.thickness().metres());
      forge(p, s, piece.size().widthMetres(), s.thickness().metres(), false);
    } else if (step instanceof Step.Grind s) {
      p.piece = piece.ground(depth(s.depth().metres()), shop.resolution());
    } else if (step instanceof Step.Restack s) {
      bare(piece);
      p.piece =
          new Restacking(s.across(), s.high(), s.turnTaken(), s.kerfTaken().metres(), units)
              .of(piece, step.mark().number(), shop.resolution());
    } else if (step instanceof Step.Tile s) {
      bare(piece);
      p.piece = tiling(s, piece, units).of(piece, step.mark().number(), shop.resolution());
    } else if (step instanceof Step.Unjacket s) {
      unjacket(p, s);
    } else if (step instanceof Step.Soak || step instanceof Step.Normalize) {
      for (Heat heat : step.heats()) {
        for (int i = 0; i < heat.times(); i++) {
          HeatCurve curve = shop.curve(heat);
          double top = curve.segments().get(curve.segments().size() - 1).toKelvin();
          p.heat(curve.then(shop.cooling(heat.coolTaken(), p.piece.size(), top)), step);
          p.endKelvin = Shop.BLACK_KELVIN;
        }
      }
    } else if (step instanceof Step.Cool s) {
      HeatCurve curve = shop.cooling(s.in(), piece.size(), before.endKelvin());
      if (!curve.segments().isEmpty()) {
        p.heat(curve, step);
      }
      p.endKelvin = Math.min(before.endKelvin(), Shop.BLACK_KELVIN);
    }
    p.piece.size().requireBillet(units);
    if (p.piece.inner().size() > MOST_LINES) {
      throw new IllegalArgumentException(
          "there would be more than " + MOST_LINES + " kinds of seams");
    }
    return p.stage(step);
  }

  /** A jacket's metal; where it touches its own steel nothing tells the two apart. */
  private Metal sheet(Steel steel, Workpiece piece) {
    Metal metal = shop.metal(steel);
    if (piece.skins().anyMatch(s -> s.metal(0).equals(metal))) {
      throw new IllegalArgumentException(
          "the jacket is of the steel that it covers, " + steel.id() + "; take sheet of another");
    }
    return metal;
  }

  private Tiling tiling(Step.Tile s, Workpiece piece, UnitSystem units) {
    Optional<Metal> sheet = s.jacket().map(j -> sheet(j.steel(), piece));
    return new Tiling(
        s.angle().radians(),
        s.slice().metres(),
        s.kerfTaken().metres(),
        depth(s.grindTaken().metres()),
        s.count(),
        sheet,
        s.jacket().map(j -> j.thickness().metres()).orElse(0.0),
        units);
  }

  /** A ground depth under these assumptions; no grinding stays none. */
  private double depth(double metres) {
    return metres == 0 ? 0 : Math.max(0, metres + shop.assumptions().grindingMetresOff());
  }

  private static void bare(Workpiece piece) {
    if (piece.jacket().isPresent()) {
      throw new IllegalArgumentException("the jacket must be taken off first");
    }
  }

  private static void thinner(Progress p, double thickness) {
    Workpiece piece = p.piece;
    if (thickness > piece.size().thicknessMetres() * (1 + SAME)) {
      throw new IllegalArgumentException(
          new Length(thickness).format(p.units)
              + " asked and the billet is only "
              + new Length(piece.size().thicknessMetres()).format(p.units)
              + " thick");
    }
  }

  private void weld(Progress p, Step.Weld s) {
    for (HeatCurve curve : curves(s)) {
      p.heat(curve, s);
      p.piece = p.piece.welded().descaled();
    }
    p.endKelvin = Shop.DULL_KELVIN;
  }

  private void draw(Progress p, Step.Draw s) {
    Size size = p.piece.size();
    double asked = s.thickness().metres() * s.width().metres();
    double there = size.thicknessMetres() * size.widthMetres();
    if (asked > there * (1 + SAME)) {
      throw new IllegalArgumentException(
          "a section of "
              + s.width().format(p.units)
              + " by "
              + s.thickness().format(p.units)
              + " asked and there is only "
              + new Length(size.widthMetres()).format(p.units)
              + " by "
              + new Length(size.thicknessMetres()).format(p.units));
    }
    forge(p, s, s.width().metres(), s.thickness().metres(), false);
  }

  private void press(Progress p, Step.Press s) {
    thinner(p, s.thickness().metres());
    forge(
        p,
        s,
        s.width().map(w -> w.metres()).orElse(p.piece.size().widthMetres()),
        s.thickness().metres(),
        s.width().isEmpty());
  }

  /** The deformation in equal logarithmic strains, each after its heat. */
  private void forge(
      Progress p, Step step, double width, double thickness, boolean spreadsEqually) {
    List<HeatCurve> curves = curves(step);
    for (int i = 0; i < curves.size(); i++) {
      p.heat(curves.get(i), step);
      Size size = p.piece.size();
      double part = 1.0 / (curves.size() - i);
      double ft = Math.pow(thickness / size.thicknessMetres(), part);
      double fw = Math.pow(width / size.widthMetres(), part);
      p.piece =
          p.piece.stretched(
              spreadsEqually ? Stretch.ofThickness(Math.min(1, ft)) : Stretch.ofSection(fw, ft));
    }
    p.endKelvin = Shop.DULL_KELVIN;
  }

  private void unjacket(Progress p, Step.Unjacket s) {
    if (p.piece.jacket().isEmpty()) {
      throw new IllegalArgumentException("there is no jacket on the billet");
    }
    p.piece = p.piece.unjacketed(depth(s.depthTaken().metres()), shop.resolution());
  }

  private List<HeatCurve> curves(Step step) {
    List<HeatCurve> all = new ArrayList<>();
    for (Heat heat : step.heats()) {
      HeatCurve curve = shop.curve(heat);
      for (int i = 0; i < heat.times(); i++) {
        all.add(curve);
      }
    }
    return all;
  }

  /** A step under way. */
  private final class Progress {
    private final UnitSystem units;
    private Workpiece piece;
    private Optional<HeatCurve> lastHeat;
    private double endKelvin;
    private double scaled;
    private double massError;
    private final List<Stage.Remark> remarks = new ArrayList<>();

    Progress(Stage before, UnitSystem units) {
      this.units = units;
      piece = before.piece();
      lastHeat = before.lastHeat();
      endKelvin = before.endKelvin();
    }

    void heat(HeatCurve curve, Step step) {
      Edge outside = shop.edge(step.outsideTaken());
      Edge faces = step instanceof Step.Weld w ? shop.edge(w.facesTaken()) : outside;
      boolean sheetBefore = sheet() > 0;
      Workpiece.Heated h = piece.heated(curve, outside, faces, shop.solver());
      piece = h.piece();
      if (piece.size().gone()) {
        throw new IllegalArgumentException("the fire has eaten all of it");
      }
      if (sheetBefore && sheet() == 0) {
        remarks.add(Stage.Remark.JACKET_SCALED_AWAY);
      }
      scaled += h.thicknessLoss();
      massError = Math.max(massError, h.worstMassError());
      lastHeat = Optional.of(curve);
    }

    private double sheet() {
      return piece.loose() instanceof Loose.Jacket ? 0 : piece.jacketMetres(piece.thickness());
    }

    Stage stage(Step step) {
      return new Stage(
          step.mark().number(),
          step.name(),
          piece,
          lastHeat,
          endKelvin,
          scaled,
          massError,
          remarks);
    }
  }
}
