package seamsoak.soak;

import java.util.List;
import java.util.Optional;
import seamsoak.state.CrossingReport;
import seamsoak.state.Etch;
import seamsoak.state.LineReport;
import seamsoak.state.SeamKeys;
import seamsoak.state.Shows;

/**
 * The lines and crossings before a soak, as they are told.
 *
 * @param states what they show in the likely case
 * @param possible and in the others
 * @param hold at the heat that their minutes are told for
 * @param at the same with what counts besides
 */
record SoakLines(States states, SoakSamples possible, Clearing.Hold hold, Faded.AtHeat at) {
  List<LineReport> lines() {
    SeamKeys keys = keys();
    return states.clearing().places().stream()
        .map(
            p ->
                LineReport.of(
                    p,
                    now(),
                    p.sight().map(s -> shows(keys.of(p), states.of(p))),
                    Clearing.minutes(at.toHold(hold.fade(p)))))
        .toList();
  }

  List<CrossingReport> crossings() {
    SeamKeys keys = keys();
    return states.clearing().crossings().stream()
        .map(
            c ->
                CrossingReport.of(
                    c,
                    now(),
                    Optional.of(shows(keys.of(c), states.of(c))),
                    Clearing.minutes(at.toHold(hold.fade(c)))))
        .toList();
  }

  private SeamKeys keys() {
    return new SeamKeys(states.clearing().places());
  }

  private Etch now() {
    return states.etches().get(0);
  }

  private Shows shows(String key, double[] likely) {
    return new Shows(
        possible.verdict(key, 0, likely[0]),
        possible.verdict(key, 1, likely[1]),
        possible.verdict(key, 2, likely[2]));
  }
}
