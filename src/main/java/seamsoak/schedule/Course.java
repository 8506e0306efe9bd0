package seamsoak.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import seamsoak.billet.Billet;
import seamsoak.billet.Exposure;
import seamsoak.billet.Shop;
import seamsoak.billet.Stack;
import seamsoak.billet.Step;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.data.Fault;
import seamsoak.heat.HeatCurve;
import seamsoak.property.etch.Descent;
import seamsoak.safety.Condition;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.source.Caution;
import seamsoak.state.Etch;
import seamsoak.state.EtchBand;
import seamsoak.state.Grain;
import seamsoak.state.LineReport;
import seamsoak.state.SeamCrossing;
import seamsoak.state.SeamPlace;
import seamsoak.state.Skin;
import seamsoak.state.StageReport;
import seamsoak.unit.Temperature;

/**
 * A piece of metal on its way through a schedule, and what has been done to it. Each step makes the
 * next course of it.
 *
 * @param workshop where it is done
 * @param start the piece before the first step
 * @param piece as it is now
 * @param grainMetres its grain now
 * @param etch what it shows, etched as it is now
 * @param on what it is wrapped in brings along
 * @param done the steps so far
 */
record Course(
    Workshop workshop,
    Workpiece start,
    Workpiece piece,
    double grainMetres,
    EtchBand etch,
    Set<Condition> on,
    List<Entry> done) {
  /** Colder than this no carbon moves and nothing scales to speak of. */
  private static final double IDLE_KELVIN = 773.15;

  /**
   * A step that was done.
   *
   * @param step as planned
   * @param cautions at it
   * @param piece after it
   * @param etch what that shows
   * @param after what is told of that
   */
  record Entry(
      ScheduleStep step,
      List<Caution> cautions,
      Workpiece piece,
      EtchBand etch,
      ScheduleAdvice.After after) {}

  static Course begin(Workshop workshop, Workpiece start, double grainMetres, EtchBand etch) {
    return new Course(
        workshop, start, start, grainMetres, etch, workshop.cautions().leftOn(), List.of());
  }

  Billet billet() {
    return workshop.billet();
  }

  Shop shop() {
    return workshop.shop();
  }

  Grain grains() {
    return workshop.grains();
  }

  double grainNumber() {
    return grains().number(grainMetres);
  }

  /** The steels as they are by now. */
  List<SteelNow> steels() {
    return SteelNow.of(billet().stack().steels().stream().distinct().toList(), piece, shop());
  }

  /** The steels as they would be after a heat in the open; as they are where it eats too much. */
  List<SteelNow> steelsAfter(HeatCurve curve) {
    try {
      double celsius = curve.peakKelvin() - Temperature.ZERO_CELSIUS;
      Edge outside =
          shop().edge(Exposure.OPEN).inStillAir(billet().equipment().kilnReaches(celsius));
      Workpiece next = piece.heated(curve, outside, Edge.SEALED, shop().solver()).piece();
      return SteelNow.of(billet().stack().steels().stream().distinct().toList(), next, shop());
    } catch (IllegalArgumentException e) {
      return steels(); // refused with its step when that is carried out
    }
  }

  /** What the fire has taken from its faces so far. */
  Skin skin() {
    return skin(piece);
  }

  private Skin skin(Workpiece of) {
    return Skin.of(of, shop().correlations().hardening().asQuenched());
  }

  /** How this piece heats and cools. */
  Heats heats() {
    return new Heats(shop(), billet().equipment(), piece.size());
  }

  /** The fire for a heat, its faces open to it. */
  Fire open(double celsius, Set<Condition> more) {
    return new Fire(heats().heater(celsius), shop().edge(Exposure.OPEN), more);
  }

  Fire open(double celsius) {
    return open(celsius, Set.of());
  }

  Check color(double celsius) {
    return new Check.Color(shop().correlations().forging().colors().words(celsius));
  }

  /** After a step that changes no structure. */
  Course carry(ScheduleStep step) {
    return carry(step, metals());
  }

  /** After a step, its steels being what they become by it. */
  Course carry(ScheduleStep step, List<ScheduleAdvice.Metal> becomes) {
    HeatCurve curve = step.curve();
    return curve.peakKelvin() > IDLE_KELVIN
        ? next(step, becomes, heated(step, curve), grains().after(curve, grainMetres), on)
        : next(step, becomes, piece, grainMetres, on);
  }

  /** After what takes a depth off every face. */
  Course ground(ScheduleStep step, Workpiece left) {
    return next(step, metals(), left, grainMetres, Set.of());
  }

  private List<ScheduleAdvice.Metal> metals() {
    return done.isEmpty() ? List.of() : done.get(done.size() - 1).after().metals();
  }

  private Workpiece heated(ScheduleStep step, HeatCurve curve) {
    try {
      Workpiece next =
          piece.heated(curve, step.fire().outside(), Edge.SEALED, shop().solver()).piece();
      if (!next.size().tooThin()) {
        return next;
      }
    } catch (IllegalArgumentException e) {
      // refused below: the scale has met in the middle of a strip
    }
    Step last = billet().steps().get(billet().steps().size() - 1);
    throw new Fault(
        last.place(),
        "the fire of the schedule ("
            + step.name().words()
            + ") would eat the billet as it is after "
            + last.title(),
        "leave it thicker");
  }

  private Course next(
      ScheduleStep step,
      List<ScheduleAdvice.Metal> becomes,
      Workpiece left,
      double grain,
      Set<Condition> wrapped) {
    List<Caution> cautions =
        workshop.cautions().at(step.kind().cautionStep(), step.hottestC(), conditions(step));
    EtchBand etched = etched(step, left, grain);
    Etch likely = etched.at(shop().assumptions().ferritePlace());
    List<SeamPlace> places = SeamPlace.of(left);
    List<LineReport> lines = LineReport.of(places, likely);
    double[] crossings =
        SeamCrossing.of(places).stream().mapToDouble(c -> c.contrast(likely)).toArray();
    Skin skin = skin(left);
    ScheduleAdvice.After after =
        new ScheduleAdvice.After(
            step.name(),
            (int) lines.stream().filter(LineReport::visible).count(),
            (int) Arrays.stream(crossings).filter(k -> k >= 1).count(),
            Arrays.stream(crossings).max().orElse(0),
            SeamPlace.deepestPct(places),
            grains().number(grain),
            skin.flats().metres() * 1e3,
            skin.sides().metres() * 1e3,
            skin.flats().softMetres() * 1e3,
            skin.sides().softMetres() * 1e3,
            StageReport.layers(left, Optional.of(step.curve())),
            lines,
            becomes,
            left.size().thicknessMetres() * 1e3);
    List<Entry> all = new ArrayList<>(done);
    all.add(new Entry(step, cautions, left, etched, after));
    return new Course(workshop, start, left, grain, etched, wrapped, List.copyOf(all));
  }

  /** What it shows after a step; one that makes no austenite leaves all ferrite as it is. */
  private EtchBand etched(ScheduleStep step, Workpiece left, double grain) {
    HeatCurve curve = step.curve();
    double first = steels().stream().mapToDouble(SteelNow::ac1C).min().orElse(0);
    if (curve.segments().isEmpty() || step.hottestC() < first) {
      return etch;
    }
    Stack stack = billet().stack();
    return step.kind() == StepKind.HARDEN
        ? EtchBand.hardened(shop(), stack, left, step.hottestC())
        : EtchBand.cooled(shop(), stack, left, Descent.of(curve), grains().number(grain));
  }

  /** What holds at a step: its fire, what is about the piece, what it cools in. */
  private Set<Condition> conditions(ScheduleStep step) {
    Set<Condition> all = new HashSet<>(step.fire().conditions(workshop.cautions().fire(), on));
    for (Leg leg : step.legs()) {
      if (leg.cool().orElse(Coolant.Plain.AIR) instanceof Coolant.Bath bath) {
        workshop
            .cautions()
            .quenchants()
            .find(bath.word())
            .map(Condition::ofBath)
            .ifPresent(all::addAll);
      }
    }
    return all;
  }

  List<ScheduleStep> planned() {
    return done.stream().map(Entry::step).toList();
  }

  List<ScheduleAdvice.After> after() {
    return done.stream().map(Entry::after).toList();
  }

  /** The first step of a kind, if there was one. */
  Optional<Entry> first(StepKind kind) {
    return done.stream().filter(d -> d.step().kind() == kind).findFirst();
  }
}
