package seamsoak.words;

import java.util.stream.Collectors;
import seamsoak.schedule.demand.Guard;

/** Why a section has to be cooled with care. */
public final class GuardWords {
  private GuardWords() {}

  /** The reasons as one sentence's part. */
  public static String because(Guard guard) {
    return guard.reasons().stream().map(GuardWords::reason).collect(Collectors.joining("; "));
  }

  private static String reason(Guard.Reason reason) {
    String steel = reason.steel();
    return switch (reason.because()) {
      case NEVER_NORMALIZED -> "the sheets of " + steel + " say to anneal only, never to normalize";
      case NORMALIZING_DISPUTED ->
          "sheets of " + steel + " disagree on whether it may be normalized";
      case HARDENS_IN_AIR -> steel + " hardens in still air in this section";
      case MAY_HARDEN_IN_AIR -> steel + " may harden in part in still air in this section";
    };
  }
}
