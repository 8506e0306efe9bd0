package seamsoak.soak;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import seamsoak.billet.Seen;
import seamsoak.state.CrossingReport;
import seamsoak.state.Etch;
import seamsoak.state.LineReport;
import seamsoak.state.SeamKeys;
import seamsoak.state.SeamPlace;
import seamsoak.state.Shows;
import seamsoak.state.Verdict;

/**
 * The lines and crossings before a soak, as they are told.
 *
 * @param states what they show in the likely case
 * @param possible and in the others
 * @param step number of the last one: what was seen after it is told as it was seen
 * @param hold at the heat that their minutes are told for
 * @param at the same with what counts besides
 */
record SoakLines(
    States states, SoakSamples possible, int step, Clearing.Hold hold, Faded.AtHeat at) {
  List<LineReport> lines() {
    SeamKeys keys = keys();
    List<SeamPlace> places = states.clearing().places();
    return places.stream()
        .map(
            p ->
                LineReport.of(
                    p,
                    now(),
                    p.sight().map(s -> shows(keys.of(p), states.of(p), l -> l.at(p, places))),
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
                    Optional.of(shows(keys.of(c), states.of(c), l -> l.at(c))),
                    Clearing.minutes(at.toHold(hold.fade(c)))))
        .toList();
  }

  private SeamKeys keys() {
    return new SeamKeys(states.clearing().places());
  }

  private Etch now() {
    return states.etches().get(0);
  }

  private Shows shows(String key, double[] likely, Predicate<Looking> here) {
    return new Shows(
        verdict(key, 0, likely[0], here),
        verdict(key, 1, likely[1], here),
        verdict(key, 2, likely[2], here));
  }

  private Verdict verdict(String key, int state, double likely, Predicate<Looking> here) {
    Verdict computed = possible.verdict(key, state, likely);
    return possible.looks().stream()
        .filter(l -> l.step() == step && l.state().ordinal() == state && here.test(l))
        .reduce((first, last) -> last)
        .map(l -> computed.seen(l.seen().line() != Seen.Look.NONE))
        .orElse(computed);
  }
}
