package seamsoak.kiln;

import java.util.Optional;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.StepName;

/**
 * A step that a billet wants of the kiln.
 *
 * @param billet which, counted from 0
 * @param step as its schedule names it
 * @param fromEnd how many of its kind come after it
 * @param plannedC as its schedule has it
 * @param lowC the coolest that will do
 * @param highC the hottest that will do
 * @param hold at least
 * @param most at most
 * @param riseMinutes until its core is there, put into the kiln at heat
 * @param then what comes after it
 */
record Wish(
    int billet,
    StepName step,
    int fromEnd,
    double plannedC,
    double lowC,
    double highC,
    Hold hold,
    Hold.Most most,
    double riseMinutes,
    Then then) {

  StepKind kind() {
    return step.kind();
  }

  /** Of a kiln that goes no hotter. */
  Wish upTo(double kilnC) {
    return new Wish(
        billet,
        step,
        fromEnd,
        Math.min(kilnC, plannedC),
        lowC,
        Math.min(kilnC, highC),
        hold,
        most,
        riseMinutes,
        then);
  }

  /** What becomes of a piece when its hold is over. */
  sealed interface Then {
    /** Taken out into still air. */
    record Air() implements Then {}

    /**
     * Quenched.
     *
     * @param bath what the shop calls it
     * @param celsius how warm that is, if it is known
     */
    record Quench(String bath, Optional<Double> celsius) implements Then {}

    /**
     * It stays in and falls with the kiln.
     *
     * @param toC where to
     * @param perHourC how fast at most
     * @param stayMinutes there
     */
    record Fall(double toC, double perHourC, double stayMinutes) implements Then {}

    /** It stays in while the kiln climbs to the heat of its next step. */
    record Stay() implements Then {}
  }
}
