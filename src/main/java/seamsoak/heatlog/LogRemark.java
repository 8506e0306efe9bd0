package seamsoak.heatlog;

/** What to know of a log besides. */
public sealed interface LogRemark {
  /** It never got hot enough for carbon to move. */
  record NeverHot(double peakC, double startC) implements LogRemark {}

  /** The rows lie so far apart that much can happen between them. */
  record FewRows(double secondsApart) implements LogRemark {}

  /** Hotter than the tolerance of that wire is stated for. */
  record BeyondTolerance(String wire, double toC, double peakC) implements LogRemark {}

  /** Type K in the range where it can rot, and read low, in gas poor in oxygen. */
  record MayRot(double minutes) implements LogRemark {}

  /** Faster than steel cools: the couple was pulled out, or open and read as cold. */
  record Falls(double minute, double fromC, double toC) implements LogRemark {}

  /** The log holds other temperatures. */
  record OtherColumns(String read, int others) implements LogRemark {}

  /** Most of the band is what nobody knows of the gaps. */
  record GapsDecide(double minutes) implements LogRemark {}
}
