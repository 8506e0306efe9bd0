package seamsoak.property.phase;

import java.util.List;
import seamsoak.property.correlation.Coefficients;
import seamsoak.property.correlation.Correlation;
import seamsoak.property.correlation.Published;

/**
 * Activity of carbon in ferrite, against graphite.
 *
 * <pre>RT ln a = RT ln(z/(1-z)) + 107350 + 25.222 T - 63.333 T (1-2z)</pre>
 *
 * z the filled share of the three interstitial sites per iron atom, z = y/3. Source: P. Gustafson,
 * Scand. J. Metall. 14 (1985) 259-267, bcc (Fe)1(C,Va)3: end-member 322050 + 75.667 T, interaction
 * -190 T, both per three sites. Range: ferrite, 20 to 912 C. Error: not at hand. Alloying is left
 * out: a steel's ferrite boundary follows from the activity at its austenite boundary.
 */
public record GustafsonFerrite(
    double endMember, double endMemberT, double interactionT, Correlation correlation)
    implements Published {
  private static final double R = 8.314463;

  public static GustafsonFerrite of(Coefficients c) {
    return new GustafsonFerrite(
        c.get("end_member"),
        c.get("end_member_T"),
        c.get("interaction_T"),
        c.describe(
            "activity of carbon in ferrite",
            "1",
            List.of(Correlation.celsiusRange(20, 912)),
            "not at hand"));
  }

  /** ln of the activity at y carbon atoms per iron atom. */
  public double lnActivity(double kelvin, double y) {
    double z = y / 3;
    return Math.log(z / (1 - z)) + standard(kelvin, z);
  }

  /** Carbon per iron atom at which ln a has a value; ferrite holds so little that two rounds do. */
  public double ratioAt(double kelvin, double lnActivity) {
    double z = 0;
    for (int i = 0; i < 20; i++) {
      double before = z;
      double w = lnActivity - standard(kelvin, z);
      z = 1 / (1 + Math.exp(-Math.min(w, 0)));
      if (Math.abs(z - before) <= 1e-15) {
        break;
      }
    }
    return 3 * z;
  }

  private double standard(double kelvin, double z) {
    return ((endMember + endMemberT * kelvin) / 3 + interactionT / 3 * kelvin * (1 - 2 * z))
        / (R * kelvin);
  }
}
