package seamsoak.billet;

import seamsoak.carbon.Eye;

/**
 * What the walk takes for granted beside the billet file; one sample of what it might be.
 *
 * @param mobilityFactor on the mobility of carbon
 * @param kelvinOff added to every temperature in the fire, K
 * @param timeFactor on every time in the fire
 * @param grindingMetresOff added to every ground depth, m
 * @param coveredShare how open a covered face is, 0 to 1
 * @param broadMetres what the eye compares a line with, on the face, m
 * @param ferritePlace where the ferrite that a cooling leaves lies: 0 little, 0.5 likely, 1 much
 * @param carbonPlace where the steels' carbon lies: -1 lowest of the grade, 0 typical, 1 highest
 * @param ironShare scaling constant: 0 as measured on steel, 1 as measured on iron, between on a
 *     log scale
 * @param carbonMonoxideAtm pressure of CO under the scale, atm
 */
public record Assumptions(
    double mobilityFactor,
    double kelvinOff,
    double timeFactor,
    double grindingMetresOff,
    double coveredShare,
    double broadMetres,
    double ferritePlace,
    double carbonPlace,
    double ironShare,
    double carbonMonoxideAtm) {
  /** What the speed of carbon may be off, as one sigma; judgement. */
  public static final double MOBILITY_SIGMA = 0.15;

  /** What a temperature in the fire may be off, as one sigma, K; judgement. */
  public static final double KELVIN_SIGMA = 15;

  /** How little open a covered face may be; judgement. */
  public static final double LEAST_COVERED = 0.3;

  /** As published and as written. */
  public static final Assumptions USUAL = usual(Defaults.COVERED.share());

  /** The same where covered faces are as a file has them. */
  public static Assumptions usual(double coveredShare) {
    return new Assumptions(1, 0, 1, 0, coveredShare, Eye.BROAD_METRES, 0.5, 0, 0, 1);
  }

  /** With so many times the mobility and the CO, and covered faces that open. */
  public Assumptions atFace(double mobilityTimes, double covered, double monoxideTimes) {
    return new Assumptions(
        mobilityTimes * mobilityFactor,
        kelvinOff,
        timeFactor,
        grindingMetresOff,
        covered,
        broadMetres,
        ferritePlace,
        carbonPlace,
        ironShare,
        monoxideTimes * carbonMonoxideAtm);
  }

  /** With times in the fire that much longer, and faces ground that much deeper. */
  public Assumptions with(double timesLonger, double metresDeeper) {
    return new Assumptions(
        mobilityFactor,
        kelvinOff,
        timesLonger * timeFactor,
        grindingMetresOff + metresDeeper,
        coveredShare,
        broadMetres,
        ferritePlace,
        carbonPlace,
        ironShare,
        carbonMonoxideAtm);
  }
}
