package seamsoak.billet;

import java.util.Optional;
import seamsoak.steel.Steel;
import seamsoak.unit.Length;

/** A sheet wrapped about the tiles, to be ground off later. */
public record Jacket(Steel steel, Length thickness, Optional<Coating> coating) {
  /** The coating stated, or the default. */
  public Coating coatingTaken() {
    return coating.orElse(Defaults.COATING);
  }
}
