package seamsoak.schedule;

import java.util.List;
import java.util.Optional;
import seamsoak.safety.Stop;
import seamsoak.schedule.demand.Conflict;

/**
 * A course to its end.
 *
 * @param conflicts that came up on the way
 * @param stops why a step must not be done as planned
 * @param blade what goes into the quench, if anything does
 */
record Treatment(
    Course course,
    List<Conflict> conflicts,
    List<Stop> stops,
    Optional<ScheduleAdvice.Outcome> blade) {
  static Treatment of(Course course) {
    return new Treatment(course, List.of(), List.of(), Optional.empty());
  }
}
