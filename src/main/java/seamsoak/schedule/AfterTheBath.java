package seamsoak.schedule;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import seamsoak.billet.Equipment;
import seamsoak.carbon.Edge;
import seamsoak.heat.HeatCurve;
import seamsoak.property.QuenchedSteel;
import seamsoak.safety.Condition;
import seamsoak.state.StageReport;
import seamsoak.unit.Length;

/**
 * Cold and tempers.
 *
 * @param course the piece, hard
 * @param quench that made it so
 */
record AfterTheBath(Course course, QuenchChoice quench) {
  private static final double ZERO = ScheduleStep.ZERO_CELSIUS;
  private static final double ROOM = QuenchedSteel.ROOM_CELSIUS;
  private static final double DRY_ICE = -75;
  private static final double NITROGEN = -190;

  /** Austenite worth a cold bath; judgement. */
  private static final double MUCH_AUSTENITE = 0.10;

  /** Cools on below room temperature if that pays and can be done; how cold it got. */
  double cold() {
    Equipment.Cold has = course.billet.equipment().coldTaken();
    double most =
        quench.steels().stream()
            .mapToDouble(t -> t.austenite().retainedShare(ROOM))
            .max()
            .orElse(0);
    if (has == Equipment.Cold.NONE || most < MUCH_AUSTENITE) {
      return ROOM;
    }
    double to = has == Equipment.Cold.DRY_ICE ? DRY_ICE : NITROGEN;
    List<SteelNow> steels = course.steels();
    course.carry(
        new ScheduleStep(
            "sub-zero",
            Heater.BENCH,
            "When it is cold to the hand, cool it on to "
                + course.show(to)
                + " in "
                + (has == Equipment.Cold.DRY_ICE ? "dry ice and alcohol" : "liquid nitrogen")
                + " for an hour, then let it come up by itself",
            String.format(
                Locale.ROOT,
                "takes most of the %.0f %% austenite that the quench leaves; within the hour after"
                    + " it, before the temper",
                100 * most),
            List.of("no pinging; a piece that pings has cracked"),
            List.of(
                new Leg(
                    "cool",
                    new HeatCurve(List.of(new HeatCurve.Segment(ROOM + ZERO, to + ZERO, 3600))),
                    has == Equipment.Cold.DRY_ICE ? "dry ice" : "nitrogen")),
            Edge.SEALED,
            Set.of(Condition.SUB_ZERO),
            Optional.empty()),
        Structures.quenched(steels, quench, to));
    return to;
  }

  void temper(Tempering t) {
    for (int i = 1; i <= Tempering.TIMES; i++) {
      Heats heats = course.heats();
      List<SteelNow> steels = course.steels();
      List<Leg> legs = heats.upAndHold(t.celsius(), Tempering.HOURS * 60);
      course.carry(
          new ScheduleStep(
              "temper " + i,
              heats.heater(t.celsius()),
              "Hold at " + course.show(t.celsius()) + ", then let it cool until a hand can bear it",
              i == 1
                  ? why(t, steels)
                  : "the first temper lets some austenite turn to fresh martensite; this one tempers"
                      + " that too",
              List.of(
                  "a thermometer beside the blade, not the oven's own",
                  i == 1
                      ? "a file begins to bite, barely"
                      : "finish grinding takes off the last "
                          + new Length(StageReport.skinMetres(course.piece())).format(course.units)
                          + " of skin; keep it so cool that no color runs"),
              legs,
              AfterForging.open(course),
              Condition.ofBath(quench.quenchant()),
              Optional.empty()),
          Structures.tempered(steels, quench, t));
    }
  }

  private String why(Tempering t, List<SteelNow> steels) {
    StringBuilder all = new StringBuilder();
    all.append(
        String.format(
            Locale.ROOT, "for %.0f HRC at the thin edge: %s", t.wantedHrc(), Tempering.times()));
    for (SteelNow s : steels) {
      all.append(
          s.beyondFormulas()
              ? ", " + s.id() + (s.ownHeat() ? " is soft from this heat" : " stays soft")
              : s.hardens()
                  ? String.format(
                      Locale.ROOT,
                      ", %s comes from %.0f to about %.0f HRC",
                      s.id(),
                      t.quenchedHrc(s),
                      t.hrc(s))
                  : ", " + s.id() + " stays soft");
    }
    return all.append("; give or take 2").toString();
  }
}
