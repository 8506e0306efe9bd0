package seamsoak.soak;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Shop;
import seamsoak.billet.Step;
import seamsoak.billet.Workpiece;
import seamsoak.data.Fault;
import seamsoak.soak.SoakNote.Measure;
import seamsoak.state.Etch;

/** What would make a billet come clear that no allowed soak clears; each answer is computed. */
public record Remedies(Billet billet, Shop shop, ToCome toCome) {
  public static final double DEEPER_METRES = 0.25e-3;
  private static final double SHORTER = 0.6;
  private static final double THINNER = 0.7;

  List<SoakNote> at(double celsius) {
    List<SoakNote> all = new ArrayList<>();
    Assumptions a = shop.assumptions();
    boolean grinds =
        billet.steps().stream()
            .anyMatch(
                s ->
                    s instanceof Step.Grind
                        || (s instanceof Step.Tile t && t.grindTaken().metres() > 0));
    if (grinds) {
      deeper(a).map(piece -> remedy(Measure.GRIND_DEEPER, piece, celsius)).ifPresent(all::add);
    } else {
      all.add(SoakNote.Plain.GRIND_FIRST);
    }
    Workpiece shorter = end(a.with(SHORTER, 0));
    all.add(remedy(Measure.SHORTER_HEATS, shorter, celsius));
    all.add(remedy(Measure.DRAW_THINNER, end(a).drawnThinner(THINNER), celsius));
    return all;
  }

  /** Ground deeper; empty where the bar has not so much to give. */
  private Optional<Workpiece> deeper(Assumptions a) {
    try {
      return Optional.of(end(a.with(1, DEEPER_METRES)));
    } catch (Fault tooThin) {
      return Optional.empty();
    }
  }

  private Workpiece end(Assumptions a) {
    Shop other = new Shop(shop.correlations(), a, shop.resolution());
    return Clearing.after(billet, other, finished()).piece();
  }

  private SoakNote remedy(Measure measure, Workpiece piece, double celsius) {
    double seconds =
        Clearing.of(piece, finished(), shop).secondsAt(celsius, Worth.of(piece, toCome.cycles()));
    return new SoakNote.Remedy(measure, Clearing.minutes(seconds), celsius);
  }

  private Etch finished() {
    return toCome.finished().at(shop.assumptions().ferritePlace());
  }
}
