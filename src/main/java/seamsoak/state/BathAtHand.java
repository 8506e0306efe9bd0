package seamsoak.state;

import seamsoak.billet.Bath;
import seamsoak.data.Fault;
import seamsoak.property.hardening.Quenchant;
import seamsoak.property.hardening.QuenchantTable;

/** A bath with what the table knows of it. */
public record BathAtHand(Bath bath, Quenchant quenchant) {
  /** {@link Fault} for a bath that the table does not have. */
  public static BathAtHand of(Bath bath, QuenchantTable table) {
    return new BathAtHand(bath, table.find(bath.kind()).orElseThrow(() -> unknown(bath, table)));
  }

  private static Fault unknown(Bath bath, QuenchantTable table) {
    return new Fault(
        bath.place(),
        "there is no quenchant '" + Fault.shown(bath.kind()) + "'",
        table.instead(bath.kind()));
  }

  /** How warm it is: as stated, else the middle of where it is used. */
  public double celsius() {
    return bath.at().map(t -> t.celsius()).orElse(quenchant.bathCelsius());
  }
}
