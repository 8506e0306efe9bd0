package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import seamsoak.heat.HeatCurve;
import seamsoak.schedule.ScheduleAdvice.Corner;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.unit.Temperature;

/**
 * A part of a step.
 *
 * @param kind rise, hold or cooling
 * @param curve of the core
 * @param face corners of the outer face on the same clock; none where it is as hot as the core
 * @param cool what it cools in, if it does
 * @param lag minutes by which the core comes later than a climbing kiln; reckoned when asked for
 */
record Leg(
    Segment.Kind kind,
    HeatCurve curve,
    List<Corner> face,
    Optional<Coolant> cool,
    DoubleSupplier lag) {
  static final DoubleSupplier NO_LAG = () -> 0;

  static Leg rise(HeatCurve core, List<Corner> face, DoubleSupplier lag) {
    return new Leg(Segment.Kind.RISE, core, face, Optional.empty(), lag);
  }

  static Leg hold(HeatCurve curve) {
    return new Leg(Segment.Kind.HOLD, curve, List.of(), Optional.empty(), NO_LAG);
  }

  static Leg cooling(Coolant in, HeatCurve core, List<Corner> face) {
    return new Leg(Segment.Kind.COOL, core, face, Optional.of(in), NO_LAG);
  }

  /** Core and face alike. */
  static Leg cooling(Coolant in, HeatCurve curve) {
    return cooling(in, curve, List.of());
  }

  /** The curves of parts, one after the other. */
  static HeatCurve curve(List<Leg> legs) {
    return new HeatCurve(legs.stream().flatMap(l -> l.curve().segments().stream()).toList());
  }

  boolean coolsIn(Coolant in) {
    return cool.filter(in::equals).isPresent();
  }

  double fromC() {
    return curve.segments().get(0).fromKelvin() - Temperature.ZERO_CELSIUS;
  }

  double toC() {
    return curve.segments().get(curve.segments().size() - 1).toKelvin() - Temperature.ZERO_CELSIUS;
  }

  /** Whether it stays at one heat. */
  boolean level() {
    return Math.abs(fromC() - toC()) < 1;
  }

  double minutes() {
    return curve.seconds() / 60;
  }

  /** The corners of the core's curve. */
  List<Corner> core() {
    return corners(curve);
  }

  static List<Corner> corners(HeatCurve curve) {
    List<Corner> all = new ArrayList<>();
    double seconds = 0;
    for (HeatCurve.Segment s : curve.segments()) {
      if (all.isEmpty()) {
        all.add(new Corner(0, s.fromKelvin() - Temperature.ZERO_CELSIUS));
      }
      seconds += s.seconds();
      all.add(new Corner(seconds / 60, s.toKelvin() - Temperature.ZERO_CELSIUS));
    }
    return all;
  }
}
