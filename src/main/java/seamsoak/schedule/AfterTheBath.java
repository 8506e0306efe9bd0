package seamsoak.schedule;

import java.util.List;
import java.util.Set;
import seamsoak.billet.Equipment;
import seamsoak.carbon.Edge;
import seamsoak.heat.HeatCurve;
import seamsoak.property.QuenchedSteel;
import seamsoak.safety.Condition;
import seamsoak.schedule.demand.QuenchChoice;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.schedule.demand.Tempering;
import seamsoak.unit.Temperature;

/**
 * Cold and tempers.
 *
 * @param course the piece, hard
 * @param quench that made it so
 */
record AfterTheBath(Course course, QuenchChoice quench) {
  private static final double ZERO = Temperature.ZERO_CELSIUS;
  private static final double ROOM = QuenchedSteel.ROOM_CELSIUS;
  private static final double DRY_ICE = -75;
  private static final double NITROGEN = -190;

  /** Austenite worth a cold bath; judgement. */
  private static final double MUCH_AUSTENITE = 0.10;

  /** Softer than this a file bites well, HRC; common practice, no source. */
  private static final double FILE_BITES_HRC = 56;

  /** How cold to go: room temperature, unless colder pays and can be done. */
  double coldestC() {
    return austenite() < MUCH_AUSTENITE
        ? ROOM
        : switch (cold()) {
          case NONE -> ROOM;
          case DRY_ICE -> DRY_ICE;
          case LIQUID_NITROGEN -> NITROGEN;
        };
  }

  private Equipment.Cold cold() {
    return course.billet().equipment().coldTaken();
  }

  /** The most that any of its steels has left. */
  private double austenite() {
    return quench.steels().stream()
        .mapToDouble(t -> t.austenite().retainedShare(ROOM))
        .max()
        .orElse(0);
  }

  /** Cooled on to where it pays. */
  Course chilled() {
    double to = coldestC();
    if (to >= ROOM) {
      return course;
    }
    boolean dryIce = cold() == Equipment.Cold.DRY_ICE;
    return course.carry(
        new ScheduleStep(
            StepName.only(StepKind.SUB_ZERO),
            new Fire(Heater.BENCH, Edge.SEALED, Set.of(Condition.SUB_ZERO)),
            List.of(
                Leg.cooling(
                    dryIce ? Coolant.Plain.DRY_ICE : Coolant.Plain.NITROGEN,
                    new HeatCurve(List.of(new HeatCurve.Segment(ROOM + ZERO, to + ZERO, 3600))))),
            new Task.SubZero(to, dryIce, 100 * austenite()),
            List.of(Check.Look.NO_PINGING)),
        Structures.quenched(course.steels(), quench, to));
  }

  /**
   * Tempered.
   *
   * @param done how many tempers it has had
   */
  Course tempered(Tempering t, int done) {
    Course now = course;
    for (int i = 1 + done; i <= Tempering.TIMES; i++) {
      now = temper(now, new StepName(StepKind.TEMPER, i), t);
    }
    return now;
  }

  private Course temper(Course now, StepName name, Tempering t) {
    List<SteelNow> steels = now.steels();
    boolean first = name.number() == 1;
    Fire open = now.open(t.celsius(), Condition.ofBath(quench.quenchant()));
    Heater in = now.heats().temperer(t.celsius());
    return now.carry(
        new ScheduleStep(
            name,
            new Fire(in, open.outside(), open.more()),
            List.of(
                now.heats().rise(ROOM, t.celsius(), in),
                now.heats().hold(t.celsius(), Tempering.HOURS * 60)),
            first ? firstTemper(t, steels) : new Task.NextTemper(t.celsius()),
            List.of(
                Check.Look.THERMOMETER,
                first ? fileAt(t) : new Check.FinishGrinding(now.skin().flats().softMetres()))),
        Structures.tempered(steels, quench, t));
  }

  /** What a file does on the hardest of its steels then. */
  private Check fileAt(Tempering t) {
    double hardest = quench.steels().stream().mapToDouble(r -> t.hrc(r.steel())).max().orElse(0);
    return hardest < FILE_BITES_HRC ? Check.Look.FILE_BITES : Check.Look.FILE_BARELY_BITES;
  }

  private static Task firstTemper(Tempering t, List<SteelNow> steels) {
    return new Task.FirstTemper(
        t.celsius(),
        t.wantedHrc(),
        Tempering.TIMES,
        Tempering.HOURS,
        steels.stream()
            .map(
                s ->
                    new Task.FirstTemper.InTheTemper(
                        s.id(),
                        s.ownHeat(),
                        t.hardenCelsius() > s.highestAc1C(),
                        t.quench()
                            .of(s)
                            .map(
                                x ->
                                    new Task.FirstTemper.Hrc(
                                        t.quenchedHrc(s), t.hrc(s), t.estimate(s).giveOrTake()))))
            .toList());
  }
}
