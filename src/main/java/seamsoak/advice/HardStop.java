package seamsoak.advice;

import java.util.Optional;
import seamsoak.billet.Coating;

/** Plans so dangerous that a caution is not enough: they are answered, but refused. */
public final class HardStop {
  private HardStop() {}

  /**
   * Why a jacket of such sheet must not go into the fire, as one sentence; empty when it may. Paint
   * and an unknown coating are left to the cautions.
   */
  public static Optional<String> jacket(Coating coating) {
    return switch (coating) {
      case GALVANIZED ->
          Optional.of(
              "The jacket is galvanized: its zinc turns to poisonous fume in the fire, so this"
                  + " jacket is refused; take plain uncoated steel.");
      case PLATED ->
          Optional.of(
              "The jacket is plated: zinc, cadmium or chromium turn to poisonous fume in the fire,"
                  + " and cadmium can kill, so this jacket is refused; take plain uncoated steel.");
      case NONE, PAINTED, UNKNOWN -> Optional.empty();
    };
  }
}
