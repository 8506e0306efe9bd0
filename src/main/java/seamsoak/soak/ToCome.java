package seamsoak.soak;

import java.util.List;
import seamsoak.heat.HeatCurve;
import seamsoak.state.EtchBand;

/**
 * What comes after the file if there is no soak, and what an etch shows then.
 *
 * @param cycles the normalizing and refining
 * @param asCooled etched as the billet is now
 * @param annealed etched after cycles and anneal
 * @param finished etched as a finished blade: hardened, or annealed where nothing hardens
 */
public record ToCome(
    List<HeatCurve> cycles, EtchBand asCooled, EtchBand annealed, EtchBand finished) {
  /** The three, in the order of {@link seamsoak.billet.Seen.Etched}. */
  List<EtchBand> each() {
    return List.of(asCooled, annealed, finished);
  }
}
