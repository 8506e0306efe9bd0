package seamsoak.page.form;

import java.util.Optional;
import seamsoak.billet.Billet;
import seamsoak.billet.file.FormBook;
import seamsoak.billet.file.Names;
import seamsoak.data.DataFolder;
import seamsoak.pairing.PairAdvisor;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.PairTable;
import seamsoak.property.Correlations;
import seamsoak.safety.CautionTable;
import seamsoak.source.SourceTable;
import seamsoak.steel.SteelTable;
import seamsoak.trace.Tracer;
import seamsoak.unit.UnitSystem;

/**
 * What answers are made with, each read once.
 *
 * @param book the forms of a billet
 * @param asked units that answers are wanted in; those of each billet unless given
 * @param cases tried for how sure an answer is
 */
public record Kit(
    Correlations correlations,
    SteelTable steels,
    Names names,
    FormBook book,
    CautionTable cautions,
    PairAdvisor pairs,
    Tracer tracer,
    Optional<UnitSystem> asked,
    int cases) {
  public static Kit of(
      DataFolder data,
      Correlations correlations,
      SteelTable steels,
      Optional<UnitSystem> asked,
      int cases) {
    Names names = Names.of(steels, data);
    return new Kit(
        correlations,
        steels,
        names,
        new FormBook(names, data),
        CautionTable.load(data),
        new PairAdvisor(correlations, PairLimits.load(data), PairTable.load(data, steels), steels),
        new Tracer(correlations, steels, SourceTable.load(data)),
        asked,
        cases);
  }

  /** What answers on a billet are told in. */
  public UnitSystem units(Billet billet) {
    return asked.or(billet::units).orElse(UnitSystem.BOTH);
  }
}
