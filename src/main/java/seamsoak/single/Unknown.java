package seamsoak.single;

/** Why a temperature of a steel is not given. */
public enum Unknown {
  /** It has so much nickel that it neither turns to austenite nor from it; judgement. */
  ALWAYS_AUSTENITE,
  /** The formulas put the start of martensite at absolute zero or below. */
  NO_MARTENSITE,
  /** So much chromium or nickel that no formula here reaches it. */
  TOO_MUCH_ALLOY
}
