package seamsoak.safety;

import java.util.Locale;
import seamsoak.billet.Step;

/** The steps that cautions are asked for: those of a billet file and of a schedule. */
public enum CautionStep {
  WELD,
  DRAW,
  PRESS,
  ROLL,
  GRIND,
  RESTACK,
  TILE,
  UNJACKET,
  SOAK,
  TWIST,
  NORMALIZE,
  REFINE,
  ANNEAL,
  RELIEVE,
  HARDEN,
  TEMPER,
  COOL,
  ETCH;

  /** Its word in the table. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** That of a step in a billet file. */
  static CautionStep of(Step step) {
    return switch (step.kind()) {
      case WELD -> WELD;
      case DRAW -> DRAW;
      case PRESS -> PRESS;
      case ROLL -> ROLL;
      case GRIND -> GRIND;
      case RESTACK -> RESTACK;
      case TILE -> TILE;
      case UNJACKET -> UNJACKET;
      case TWIST -> TWIST;
      case SOAK -> SOAK;
      case ANNEAL -> ANNEAL;
      case NORMALIZE -> NORMALIZE;
      case REFINE -> REFINE;
      case RELIEVE -> RELIEVE;
      case HARDEN -> HARDEN;
      case TEMPER -> TEMPER;
      case COOL -> COOL;
    };
  }
}
