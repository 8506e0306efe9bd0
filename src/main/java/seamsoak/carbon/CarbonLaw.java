package seamsoak.carbon;

import java.util.Optional;
import seamsoak.property.phase.PhaseLines;
import seamsoak.unit.Temperature;

/**
 * How carbon behaves in one metal: what pulls it (its activity) and how easily it moves.
 *
 * <p>Carbon is counted as y, atoms per metal atom. It flows down its activity; where two phases
 * meet the activity is flat while carbon rises, so nothing flows inside such a mixture. With the
 * mobility integrated over the activity once ({@link Isotherm#potential}) one formula serves
 * ferrite rims, austenite and undissolved carbide alike (Kirchhoff's transformation): {@code flux =
 * -d potential/dx} within one metal, with the activity continuous from one metal to the next.
 */
public interface CarbonLaw {
  /** The law at one temperature. */
  Isotherm at(double kelvin);

  /** Temperature at which the law jumps, K: where austenite forms; NaN when it never does. */
  default double jumpKelvin() {
    return Double.NaN;
  }

  /** Where unlike steels are compared: all is austenite, K. */
  double COMPARED_AT_KELVIN = 1100 + Temperature.ZERO_CELSIUS;

  /** Where its phases begin and end; empty for a metal that is no steel of the tables. */
  default Optional<PhaseLines> phases() {
    return Optional.empty();
  }

  /** The law at one temperature; y is carbon per metal atom, all functions rise or stay level. */
  interface Isotherm {
    /** Activity of carbon against graphite. */
    double activity(double y);

    /** Integral of the mobility over the activity, m2/s. */
    double potential(double y);

    /** Derivative of {@link #potential} by y: the diffusivity, 0 in a mixture of phases, m2/s. */
    double potentialSlope(double y);

    /** Both for cells from one to another, exclusive: what the solver spends its time on. */
    default void potentials(double[] y, int from, int to, double[] potential, double[] slope) {
      for (int i = from; i < to; i++) {
        potential[i] = potential(y[i]);
        slope[i] = potentialSlope(y[i]);
      }
    }

    /**
     * Stops cells that pass into another mixture of phases just beyond its border; tells whether.
     */
    default boolean stopAtBends(double[] from, double[] to, int first, int end) {
      return false;
    }

    /** Smallest carbon per metal atom with that activity. */
    double ratioAt(double activity);

    /** Carbon per metal atom with the activity that so much has in another metal. */
    default double ratioBeside(Isotherm other, double ratio) {
      return ratioAt(other.activity(ratio));
    }

    /** The same as {@link #ratioAt}, from a first guess at it. */
    default double ratioNear(double activity, double guess) {
      return ratioAt(activity);
    }

    /** Whether so much carbon is one phase, in which activity and potential are smooth. */
    default boolean isSmooth(double y) {
      return false;
    }

    /** Logarithm of the activity and its derivative by y; asked for only where it is smooth. */
    default double lnActivity(double y) {
      return Math.log(activity(y));
    }

    default double lnActivitySlope(double y) {
      return potentialSlope(y) / (mobility(y) * activity(y));
    }

    /** The highest activity it can have: with more carbon, the rest is carbide. */
    default double mostActivity() {
      return activity(Double.MAX_VALUE);
    }

    /** Derivative of the potential by the activity at that y, m2/s. */
    double mobility(double y);
  }
}
