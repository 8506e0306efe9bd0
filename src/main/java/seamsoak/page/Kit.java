package seamsoak.page;

import seamsoak.billet.file.FormBook;
import seamsoak.billet.file.Names;
import seamsoak.data.DataFolder;
import seamsoak.pairing.PairAdvisor;
import seamsoak.pairing.PairLimits;
import seamsoak.pairing.PairTable;
import seamsoak.property.Correlations;
import seamsoak.safety.CautionTable;
import seamsoak.steel.SteelTable;

/**
 * What answers are made with, each read once.
 *
 * @param book the forms of a billet
 */
record Kit(
    Correlations correlations,
    SteelTable steels,
    Names names,
    FormBook book,
    CautionTable cautions,
    PairAdvisor pairs) {
  static Kit of(DataFolder data, Correlations correlations, SteelTable steels) {
    Names names = Names.of(steels, data);
    return new Kit(
        correlations,
        steels,
        names,
        new FormBook(names, data),
        CautionTable.load(data),
        new PairAdvisor(correlations, PairLimits.load(data), PairTable.load(data, steels), steels));
  }
}
