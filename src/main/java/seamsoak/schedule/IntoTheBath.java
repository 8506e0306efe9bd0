package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Equipment;
import seamsoak.property.QuenchedSteel;
import seamsoak.property.hardening.Quenchant;
import seamsoak.safety.Condition;
import seamsoak.safety.Stop;
import seamsoak.schedule.demand.Change;
import seamsoak.schedule.demand.HardeningHeat;
import seamsoak.schedule.demand.QuenchChoice;
import seamsoak.steel.Hardenability;

/**
 * Pre-heat and hardening.
 *
 * @param course the piece
 * @param heat to harden from
 * @param quench chosen for it
 * @param coarse whether the carbides are coarse from an anneal
 */
record IntoTheBath(Course course, HardeningHeat heat, QuenchChoice quench, boolean coarse) {
  /** Thicker sections are warmed through first, m; judgement. */
  private static final double THICK_METRES = 10e-3;

  /** Where a pre-heat is held; empty when none is needed. */
  private Optional<Double> preHeatC() {
    boolean deep =
        heat.windows().stream()
            .map(w -> w.steel().steel().hardenability())
            .anyMatch(h -> h.filter(x -> x.compareTo(Hardenability.DEEP) >= 0).isPresent());
    boolean thick = course.piece().size().thicknessMetres() > THICK_METRES;
    double celsius = Change.of(course.steels()).celsius();
    return deep || thick ? Optional.of(celsius) : Optional.empty();
  }

  /**
   * From the pre-heat to the quench.
   *
   * @param refused why it must not be done as planned
   */
  Course harden(Optional<Stop> refused) {
    Optional<Double> pre = preHeatC();
    Course warm = pre.map(this::preHeat).orElse(course);
    return warm.carry(
        quenched(pre.orElse(QuenchedSteel.ROOM_CELSIUS), refused),
        Structures.quenched(warm.steels(), quench, QuenchedSteel.ROOM_CELSIUS));
  }

  private Course preHeat(double celsius) {
    double minutes = course.heats().heater(celsius) == Heater.FORGE ? Heats.FORGE_MINUTES : 10;
    return course.carry(
        new ScheduleStep(
            StepName.only(StepKind.PRE_HEAT),
            course.open(celsius),
            course.heats().upAndHold(celsius, minutes),
            new Task.PreHeat(celsius),
            List.of(Check.Look.DULL_RED_THROUGHOUT)));
  }

  private ScheduleStep quenched(double fromCelsius, Optional<Stop> refused) {
    Heats heats = course.heats();
    double celsius = heat.celsius();
    Fire open = course.open(celsius, Condition.ofBath(quench.quenchant()));
    Heater in =
        course.billet().equipment().saltTaken() == Equipment.Salt.NEUTRAL ? Heater.SALT : open.in();
    double wanted = heat.holdMinutes(coarse);
    double minutes = in == Heater.FORGE ? Heats.FORGE_MINUTES : wanted;
    return new ScheduleStep(
        StepName.only(StepKind.HARDEN),
        new Fire(in, open.outside(), open.more()),
        List.of(
            heats.rise(fromCelsius, celsius, in),
            heats.hold(celsius, minutes),
            heats.quench(celsius, quench)),
        task(minutes, wanted),
        checks(),
        refused);
  }

  private Task task(double minutes, double wanted) {
    return new Task.Harden(
        heat.celsius(),
        quench.quenchant().name(),
        quench.quenchant().kind(),
        quench.celsius(),
        heat.told(),
        minutes,
        wanted,
        heat.windows().stream().anyMatch(w -> w.steel().overEutectoid()),
        quench.steels().get(0).result().coreSeconds8to5(),
        quench.steels().stream()
            .map(
                t ->
                    new Task.Harden.InTheQuench(
                        t.steel().id(),
                        t.allowsSeconds(),
                        t.middle(),
                        t.result().edgeHrc().value(),
                        t.result().faceHrc().value(),
                        t.result().coreHrc().value()))
            .toList());
  }

  private List<Check> checks() {
    double magnet =
        heat.windows().stream().mapToDouble(w -> w.steel().magnet().high()).max().orElseThrow();
    List<Check> all = new ArrayList<>(coupons());
    all.add(new Check.MagnetBelow(heat.celsius() - magnet));
    all.add(course.color(heat.celsius()));
    if (quench.quenchant().kind() == Quenchant.Kind.WATER) {
      all.add(Check.Look.WATER_CRACKS);
    }
    all.add(Check.Look.FILE_SKATES);
    all.add(Check.Look.GRAY_SILK);
    return all;
  }

  /** What to try first, of stock of unknown make. */
  private List<Check> coupons() {
    return heat.windows().stream()
        .flatMap(w -> w.steel().mayBe().stream())
        .flatMap(
            m ->
                m.hardenC().stream()
                    .<Check>map(c -> new Check.Coupons(m.stock(), m.reckonedAs(), c)))
        .toList();
  }
}
