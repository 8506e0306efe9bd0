package seamsoak.billet.file;

import java.util.Optional;
import java.util.function.Function;
import seamsoak.data.DataFolder;
import seamsoak.property.hardening.QuenchantTable;
import seamsoak.steel.Steel;
import seamsoak.steel.SteelTable;

/**
 * What the names in a billet file are looked up in.
 *
 * @param steel the steel of an id, an alias or a written analysis
 * @param nearest the known steel nearest to a misspelt one
 * @param quenchants by their ids
 * @param gauges of sheet
 * @param trade words of the trade that no file uses
 */
public record Names(
    Function<String, Optional<Steel>> steel,
    Function<String, Optional<String>> nearest,
    QuenchantTable quenchants,
    Gauges gauges,
    TradeWords trade) {
  /** Steels by a table, all else by the tables of a folder. */
  public static Names of(SteelTable steels, DataFolder data) {
    return of(steels::find, steels::nearest, data);
  }

  /** Steels by what is handed in, all else by the tables of a folder. */
  public static Names of(
      Function<String, Optional<Steel>> steel,
      Function<String, Optional<String>> nearest,
      DataFolder data) {
    return new Names(
        steel, nearest, QuenchantTable.load(data), Gauges.load(data), TradeWords.load(data));
  }
}
