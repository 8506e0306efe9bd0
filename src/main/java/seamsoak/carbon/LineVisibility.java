package seamsoak.carbon;

/**
 * When a line shows after etching: its contrast against the metal around it, as an eye takes it in.
 * The contrast is told in carbon missing over the least that shows.
 *
 * <p>The eye blurs what it looks at over 0.06 mm and compares it with what lies about it, over some
 * 3 mm: sensitivity to contrast at 400 mm (J.L. Mannos, D.J. Sakrison, IEEE Trans. Inf. Theory 20
 * (1974) 525; A.B. Watson, A.J. Ahumada, J. Vision 5 (2005) 717; both as read in public code, not
 * in the papers), fitted by two Gaussians: 0.045 to 0.08 and 1.2 to 4.1 mm. The 3 mm are judgement
 * within that range.
 *
 * @param dipPct carbon that must be missing, in a line of middling width, to show, wt%; judgement
 * @param broadMetres standard deviation of what a line is compared with, on the face, m
 */
public record LineVisibility(double dipPct, double broadMetres) {
  /** 0.10 wt% against 3 mm. */
  public static final LineVisibility USUAL = new LineVisibility(0.10, 3e-3);

  /** Standard deviation of what the eye sees as one point, on the face, m. */
  static final double FINE_METRES = 0.06e-3;
}
