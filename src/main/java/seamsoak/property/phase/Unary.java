package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Correlation;
import seamsoak.source.Standing;

/**
 * Gibbs energies of the pure phases that cementite and ferrite are counted against, J/mol of
 * formula, T kelvin: bcc iron and graphite from A.T. Dinsdale, Calphad 15 (1991) 317, with the
 * magnetic term of Inden, Hillert and Jarl; cementite Fe3C from B. Hallstedt et al., Calphad 34
 * (2010) 129-133. Range 298 to 1811 K, here taken as 20 to 1538 C.
 */
public final class Unary {
  private static final double R = 8.314463;

  private Unary() {}

  /** What these energies say about themselves. */
  public static Correlation correlation() {
    return new Correlation(
        "pure-phases",
        "activity of carbon where ferrite and cementite meet below A1",
        "1",
        "dinsdale1991, hallstedt2010",
        Standing.SEEN,
        List.of(Correlation.celsiusRange(20, 1538)),
        "not at hand");
  }

  public static double graphite(double t) {
    return -17368.441
        + 170.73 * t
        - 24.3 * t * Math.log(t)
        - 4.723e-4 * t * t
        + 2562600 / t
        - 2.643e8 / (t * t)
        + 1.2e10 / (t * t * t);
  }

  public static double bccIron(double t) {
    return 1225.7
        + 124.134 * t
        - 23.5143 * t * Math.log(t)
        - 4.39752e-3 * t * t
        - 5.8927e-8 * t * t * t
        + 77359 / t
        + magnetic(t, 1043, 2.22, 0.40);
  }

  public static double cementite(double t) {
    return -10195.860754
        + 690.949887637 * t
        - 118.47637 * t * Math.log(t)
        - 7e-4 * t * t
        + 590527 / t
        + magnetic(t, 485, 1.008, 0.28);
  }

  /** ln of the carbon activity at which ferrite and cementite stand side by side. */
  public static double lnActivityOfFerriteAndCementite(double t) {
    return (cementite(t) - 3 * bccIron(t) - graphite(t)) / (R * t);
  }

  private static double magnetic(double t, double curie, double moment, double p) {
    double a = 518.0 / 1125 + 11692.0 / 15975 * (1 / p - 1);
    double s = t / curie;
    double f =
        s < 1
            ? 1
                - (79 / (140 * p * s)
                        + 474.0
                            / 497
                            * (1 / p - 1)
                            * (Math.pow(s, 3) / 6 + Math.pow(s, 9) / 135 + Math.pow(s, 15) / 600))
                    / a
            : -(Math.pow(s, -5) / 10 + Math.pow(s, -15) / 315 + Math.pow(s, -25) / 1500) / a;
    return R * t * Math.log(moment + 1) * f;
  }
}
