package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import seamsoak.billet.Billet;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.carbon.LineVisibility;
import seamsoak.data.Fault;
import seamsoak.heat.HeatCurve;
import seamsoak.safety.Condition;
import seamsoak.safety.StepCautions;
import seamsoak.source.Caution;
import seamsoak.state.LineReport;
import seamsoak.state.SeamCrossing;
import seamsoak.state.SeamPlace;
import seamsoak.state.StageReport;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.Temperature;
import seamsoak.unit.UnitSystem;

/** A piece of metal on its way through a schedule, and all that is noted of it. */
final class Course {
  /** Colder than this no carbon moves and nothing scales to speak of. */
  private static final double IDLE_KELVIN = 773.15;

  final Billet billet;
  final Shop shop;
  final UnitSystem units;
  private final LineVisibility visibility;
  private final StepCautions cautions;
  private final Grain grains;
  private final Workpiece start;
  private Workpiece piece;
  private double grainMetres;
  private Set<Condition> on;
  private List<ScheduleAdvice.Metal> metals = List.of();
  private final List<ScheduleAdvice.Segment> segments = new ArrayList<>();
  private final List<ScheduleAdvice.Step> steps = new ArrayList<>();
  private final List<ScheduleAdvice.After> after = new ArrayList<>();
  private final List<Workpiece> pieces = new ArrayList<>();
  private final List<ScheduleStep> planned = new ArrayList<>();

  Course(
      Billet billet,
      Shop shop,
      LineVisibility visibility,
      StepCautions cautions,
      UnitSystem units,
      Workpiece start,
      double grainMetres) {
    this.billet = billet;
    this.shop = shop;
    this.visibility = visibility;
    this.cautions = cautions;
    this.on = cautions.leftOn();
    this.units = units;
    this.grains = new Grain(shop, billet.stack());
    this.start = start;
    this.piece = start;
    this.grainMetres = grainMetres;
  }

  /** As it was before the first step. */
  Workpiece start() {
    return start;
  }

  Workpiece piece() {
    return piece;
  }

  Grain grains() {
    return grains;
  }

  double grainMetres() {
    return grainMetres;
  }

  double grainNumber() {
    return grains.number(grainMetres);
  }

  /** The steels as they are by now. */
  List<SteelNow> steels() {
    return SteelNow.of(billet.stack().steels().stream().distinct().toList(), piece, shop);
  }

  /** How this piece heats and cools. */
  Heats heats() {
    return new Heats(shop, billet.equipment(), piece.size());
  }

  /** A temperature as the answer shows it. */
  String show(double celsius) {
    return Temperature.ofCelsius(celsius).format(units);
  }

  /** A range as the answer shows it. */
  String between(double low, double high) {
    return show(low) + (show(low).equals(show(high)) ? "" : " to " + show(high));
  }

  /** A published range as the answer shows it. */
  String between(TemperatureRange range) {
    return between(range.lowC(), range.highC());
  }

  /** A difference as a shop can tell it: to 10 F and 5 C. */
  String apart(double kelvin) {
    return units.show(10 * Math.round(kelvin * 1.8 / 10) + " F", 5 * Math.round(kelvin / 5) + " C");
  }

  /** The color of a heat, in all the words that tables have for it. */
  String color(double celsius) {
    List<String> words = shop.correlations().colors().words(celsius);
    return "color " + String.join(" or ", words) + ", by which table you ask";
  }

  /** Does a step and notes what comes of it. */
  void carry(ScheduleStep step, List<ScheduleAdvice.Metal> becomes) {
    HeatCurve curve = step.curve();
    if (curve.peakKelvin() > IDLE_KELVIN) {
      piece = heated(step, curve);
      grainMetres = grains.after(curve, grainMetres);
    }
    note(step, becomes, piece);
  }

  private Workpiece heated(ScheduleStep step, HeatCurve curve) {
    try {
      Workpiece next = piece.heated(curve, step.outside(), Edge.SEALED, shop.solver()).piece();
      if (!next.size().tooThin()) {
        return next;
      }
    } catch (IllegalArgumentException e) {
      // refused below: the scale has met in the middle of a strip
    }
    Step last = billet.steps().get(billet.steps().size() - 1);
    throw new Fault(
        last.place(),
        "the fire of the schedule ("
            + step.name()
            + ") would eat the billet as it is after "
            + last.title(),
        "leave it thicker");
  }

  /** Takes a depth off every face and notes it. */
  void grind(ScheduleStep step, Workpiece left) {
    note(step, metals, left);
    on = Set.of();
  }

  private void note(ScheduleStep step, List<ScheduleAdvice.Metal> becomes, Workpiece left) {
    piece = left;
    metals = becomes.isEmpty() ? metals : becomes;
    List<Caution> said =
        cautions.at(step.cautionStep(), step.hottestC(), step.conditions(cautions.fire(), on));
    segments.addAll(step.segments(said));
    steps.add(
        new ScheduleAdvice.Step(
            step.name(),
            step.in().word(),
            step.doing(),
            step.hold().map(Leg::toC),
            step.hold().map(Leg::minutes),
            step.why(),
            step.checks(),
            said,
            step.refused()));
    planned.add(step);
    pieces.add(piece);
    List<SeamPlace> places = SeamPlace.of(piece, visibility);
    List<LineReport> lines = LineReport.of(places, visibility);
    after.add(
        new ScheduleAdvice.After(
            step.name(),
            (int) lines.stream().filter(LineReport::visible).count(),
            (int) SeamCrossing.of(places).stream().filter(c -> c.shows(visibility)).count(),
            ScheduleWords.deepest(lines),
            grainNumber(),
            StageReport.skinMetres(piece) * 1e3,
            StageReport.layers(piece),
            lines,
            metals,
            piece.size().thicknessMetres() * 1e3));
  }

  List<ScheduleAdvice.Segment> segments() {
    return List.copyOf(segments);
  }

  List<ScheduleAdvice.Step> steps() {
    return List.copyOf(steps);
  }

  List<ScheduleAdvice.After> after() {
    return List.copyOf(after);
  }

  List<ScheduleStep> planned() {
    return List.copyOf(planned);
  }

  /** The metal after the step of that name, if it was done. */
  Optional<Workpiece> after(String step) {
    for (int i = 0; i < planned.size(); i++) {
      if (planned.get(i).name().equals(step)) {
        return Optional.of(pieces.get(i));
      }
    }
    return Optional.empty();
  }
}
