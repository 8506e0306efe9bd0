package seamsoak.billet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Metal;
import seamsoak.heat.HeatCurve;
import seamsoak.steel.Steel;
import seamsoak.unit.Length;
import seamsoak.unit.UnitSystem;

/** One step under way: the metal, what heats do to it and what is noted meanwhile. */
final class StepWork {
  private static final double SAME = 1e-6;

  /** No grains form anew in a cooler heat, K: where iron and carbon first change. */
  private static final double COOLEST_GRAINS_KELVIN = 1000;

  private final Shop shop;
  private final Stage before;
  private final UnitSystem units;
  private final Equipment equipment;
  private Workpiece piece;
  private Optional<HeatCurve> lastHeat;
  private double endKelvin;
  private double scaled;
  private double massError;
  private final List<Stage.Remark> remarks = new ArrayList<>();
  private final int turnsAsked;
  private int turns;
  private Optional<Workpiece> then = Optional.empty();

  /**
   * @param turnsAsked after how many stays in the fire it is asked what the metal is like; 0 for
   *     the end of the step
   */
  StepWork(Shop shop, Stage before, UnitSystem units, Equipment equipment, int turnsAsked) {
    this.equipment = equipment;
    this.turnsAsked = turnsAsked;
    this.shop = shop;
    this.before = before;
    this.units = units;
    piece = before.piece();
    lastHeat = before.lastHeat();
    endKelvin = before.endKelvin();
  }

  /** Does it; {@link IllegalArgumentException} with the reason where it cannot be done. */
  void carryOut(Step step) {
    piece =
        switch (step.kind()) {
          case WELD -> weld((Step.Weld) step);
          case DRAW -> draw((Step.Draw) step);
          case PRESS -> press((Step.Press) step);
          case ROLL -> roll((Step.Roll) step);
          case GRIND ->
              piece.ground(depth(((Step.Grind) step).depth().metres()), shop.resolution());
          case RESTACK -> restack((Step.Restack) step);
          case TILE -> tile((Step.Tile) step);
          case UNJACKET -> unjacket((Step.Unjacket) step);
          case TWIST -> twist((Twist) step);
          case SOAK, ANNEAL, NORMALIZE, REFINE, RELIEVE, HARDEN, TEMPER -> heatAndCool(step);
          case COOL -> cool((Step.Cool) step);
        };
  }

  private Workpiece roll(Step.Roll s) {
    thinner(s.thickness().metres());
    return forge(s, piece.size().widthMetres(), s.thickness().metres(), false);
  }

  private Workpiece restack(Step.Restack s) {
    bare();
    return new Restacking(s.across(), s.high(), s.turnTaken(), s.kerfTaken().metres(), units)
        .of(piece, s.mark().number(), shop.resolution());
  }

  private Workpiece tile(Step.Tile s) {
    bare();
    return tiling(s).of(piece, s.mark().number(), shop.resolution());
  }

  private Workpiece heatAndCool(Step step) {
    for (Heat heat : step.heats()) {
      for (HeatCurve curve : shop.curves(heat)) {
        HeatCurve cooling = shop.cooling(step.coolTaken(heat), piece.size(), curve.endKelvin());
        heat(curve.then(cooling), step);
        endKelvin = Shop.BLACK_KELVIN;
        turnDone();
      }
    }
    return piece;
  }

  /** Heated as often as said; what lies about the middle keeps its profile. */
  private Workpiece twist(Twist s) {
    bare();
    for (HeatCurve curve : curves(s)) {
      heat(curve, s);
      piece = piece.descaled();
      turnDone();
    }
    double radius = Math.min(piece.size().thicknessMetres(), piece.size().widthMetres()) / 2;
    remarks.add(new Stage.Twisted(s.shrinkAt(radius / 2), s.shrinkAt(radius)));
    endKelvin = Shop.DULL_KELVIN;
    return piece;
  }

  /** What the metal is like after each stay in the fire, as far as it is asked for. */
  private void turnDone() {
    turns++;
    if (turns == turnsAsked) {
      then = Optional.of(piece);
    }
  }

  private Workpiece cool(Step.Cool s) {
    HeatCurve curve = shop.cooling(s.in(), piece.size(), before.endKelvin());
    if (!curve.segments().isEmpty()) {
      heat(curve, s);
    }
    endKelvin = Math.min(before.endKelvin(), Shop.BLACK_KELVIN);
    return piece;
  }

  /** A jacket's metal; where it touches its own steel nothing tells the two apart. */
  private Metal sheetOf(Steel steel) {
    Metal metal = shop.metal(steel);
    if (piece.skins().anyMatch(s -> s.metal(0).equals(metal))) {
      throw new CannotBeDone(
          "the jacket is of the steel that it covers, " + steel.id(),
          "take sheet of another steel");
    }
    return metal;
  }

  private Tiling tiling(Step.Tile s) {
    Optional<Metal> sheet = s.jacket().map(j -> sheetOf(j.steel()));
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

  private void bare() {
    if (piece.jacket().isPresent()) {
      throw new CannotBeDone(
          "the jacket must be taken off first", "put an unjacket step before it");
    }
  }

  private void thinner(double thickness) {
    if (thickness > piece.size().thicknessMetres() * (1 + SAME)) {
      throw new CannotBeDone(
          new Length(thickness).format(units)
              + " asked and the billet is only "
              + new Length(piece.size().thicknessMetres()).format(units)
              + " thick",
          "forging makes it thinner only: ask for less, or leave the step out");
    }
  }

  private Workpiece weld(Step.Weld s) {
    for (HeatCurve curve : curves(s)) {
      heat(curve, s);
      piece = piece.welded().descaled();
      turnDone();
    }
    endKelvin = Shop.DULL_KELVIN;
    return piece;
  }

  private Workpiece draw(Step.Draw s) {
    Size size = piece.size();
    double asked = s.thickness().metres() * s.width().metres();
    double there = size.thicknessMetres() * size.widthMetres();
    if (asked > there * (1 + SAME)) {
      throw new CannotBeDone(
          "a section of "
              + s.width().format(units)
              + " by "
              + s.thickness().format(units)
              + " asked and there is only "
              + new Length(size.widthMetres()).format(units)
              + " by "
              + new Length(size.thicknessMetres()).format(units),
          "forging makes a section smaller only: ask for less, or leave the step out");
    }
    return forge(s, s.width().metres(), s.thickness().metres(), false);
  }

  private Workpiece press(Step.Press s) {
    thinner(s.thickness().metres());
    return forge(
        s,
        s.width().map(w -> w.metres()).orElse(piece.size().widthMetres()),
        s.thickness().metres(),
        s.width().isEmpty());
  }

  /** The deformation in equal logarithmic strains, each after its heat. */
  private Workpiece forge(Step step, double width, double thickness, boolean spreadsEqually) {
    List<HeatCurve> curves = curves(step);
    for (int i = 0; i < curves.size(); i++) {
      heat(curves.get(i), step);
      Size size = piece.size();
      double part = 1.0 / (curves.size() - i);
      double ft = Math.pow(thickness / size.thicknessMetres(), part);
      double fw = Math.pow(width / size.widthMetres(), part);
      piece =
          piece.stretched(
              spreadsEqually ? Stretch.ofThickness(Math.min(1, ft)) : Stretch.ofSection(fw, ft));
      turnDone();
    }
    endKelvin = Shop.DULL_KELVIN;
    return piece;
  }

  private Workpiece unjacket(Step.Unjacket s) {
    if (piece.jacket().isEmpty()) {
      throw new CannotBeDone(
          "there is no jacket on the billet", "leave the step out, or give the tile step a jacket");
    }
    return piece.unjacketed(depth(s.depthTaken().metres()), shop.resolution());
  }

  private List<HeatCurve> curves(Step step) {
    return step.heats().stream().flatMap(h -> shop.curves(h).stream()).toList();
  }

  void heat(HeatCurve curve, Step step) {
    if (curve.segments().isEmpty()) {
      return; // too cool for carbon and scale
    }
    Edge outside = shop.edge(step.outsideTaken()).inStillAir(inKiln(step));
    Edge faces = step instanceof Step.Weld w ? shop.edge(w.facesTaken()) : outside;
    boolean sheetBefore = sheet() > 0;
    Workpiece.Heated h = piece.heated(curve, outside, faces, shop.solver());
    piece = h.piece();
    if (piece.size().gone()) {
      throw new CannotBeDone(
          "the fire has eaten all of it", "plan fewer or shorter heats, or begin thicker");
    }
    if (sheetBefore && sheet() == 0) {
      remarks.add(new Stage.JacketScaledAway());
    }
    scaled += h.thicknessLoss();
    massError = Math.max(massError, h.worstMassError());
    if (curve.peakKelvin() > COOLEST_GRAINS_KELVIN) {
      lastHeat = Optional.of(curve);
    }
  }

  /** Soaked and treated in the kiln, where there is one that gets there; forged at the forge. */
  private boolean inKiln(Step step) {
    return (step.kind() == Step.Kind.SOAK || step.kind().treats())
        && step.heats().stream().allMatch(h -> equipment.kilnReaches(h.hottest().celsius()));
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
        remarks,
        then.orElse(piece));
  }

  /** The metal by now. */
  Workpiece piece() {
    return piece;
  }
}
