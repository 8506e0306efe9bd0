package seamsoak.carbon;

/**
 * How carbon behaves in one metal: what pulls it (its activity) and how easily it moves.
 *
 * <p>Carbon is counted as y, atoms per metal atom. It flows down its activity; where two phases
 * meet the activity is flat while carbon rises, so nothing flows inside such a mixture. With the
 * mobility integrated over the activity once ({@link At#potential}) one formula serves ferrite
 * rims, austenite and undissolved carbide alike (Kirchhoff's transformation): {@code flux = -d
 * potential/dx} within one metal, with the activity continuous from one metal to the next.
 */
public interface CarbonLaw {
  /** The law at one temperature. */
  At at(double kelvin);

  /** The law at one temperature; y is carbon per metal atom, all functions rise or stay level. */
  interface At {
    /** Activity of carbon against graphite. */
    double activity(double y);

    /** Integral of the mobility over the activity, m2/s. */
    double potential(double y);

    /** Derivative of {@link #potential} by y: the diffusivity, 0 in a mixture of phases, m2/s. */
    double potentialSlope(double y);

    /** Smallest carbon per metal atom with that activity. */
    double ratioAt(double activity);

    /** The same as {@link #ratioAt}, from a first guess at it. */
    default double ratioNear(double activity, double guess) {
      return ratioAt(activity);
    }

    /** The highest activity it can have: with more carbon, the rest is carbide. */
    default double mostActivity() {
      return activity(Double.MAX_VALUE);
    }

    /** Derivative of the potential by the activity at that y, m2/s. */
    double mobility(double y);
  }
}
