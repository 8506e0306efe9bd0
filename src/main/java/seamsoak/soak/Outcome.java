package seamsoak.soak;

import java.util.Map;
import seamsoak.soak.Histories.Sample;

/**
 * What comes of one history.
 *
 * @param sample the history
 * @param faded how its brightest line fades in the finished blade
 * @param brightestNow contrast of that line in a blade with neither soak nor cycles
 * @param brightest by state, contrast of the brightest line without a soak
 * @param contrasts by line and state, contrast without a soak
 * @param belief what the looks make of it
 * @param unseen by level of contrast, the same with no line seen in the blade besides
 */
record Outcome(
    Sample sample,
    Faded faded,
    double brightestNow,
    double[] brightest,
    Map<String, double[]> contrasts,
    Belief belief,
    double[] unseen) {
  /** With its seconds set right for the samples' grid, by temperature. */
  Outcome scaled(double[] factors) {
    return new Outcome(
        sample, faded.scaled(factors), brightestNow, brightest, contrasts, belief, unseen);
  }
}
