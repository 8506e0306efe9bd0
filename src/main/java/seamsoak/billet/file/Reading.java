package seamsoak.billet.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import seamsoak.billet.LoggedCurve;
import seamsoak.billet.OldWord;
import seamsoak.billet.Step;
import seamsoak.steel.Steel;
import seamsoak.unit.UnitSystem;

/**
 * What the reading of an entry leans on besides the entry.
 *
 * @param units which a bare number takes, if the file names any
 * @param unitsToldWrong whether it names some that are none, which is told once and not at each
 *     bare number
 * @param names what names are looked up in
 * @param steels those named so far; one that is named twice goes by the first name
 * @param oldWords those met so far
 * @param steps the kinds of the steps so far, with the one that is being read; none where a kind
 *     could not be read
 * @param curves of real heats by their names; none where one could not be read
 */
record Reading(
    Optional<UnitSystem> units,
    boolean unitsToldWrong,
    Names names,
    List<Steel> steels,
    List<OldWord> oldWords,
    List<Optional<Step.Kind>> steps,
    Map<String, Optional<LoggedCurve>> curves) {
  Reading {
    steps = Collections.unmodifiableList(new ArrayList<>(steps));
  }

  Reading(Names names) {
    this(Optional.empty(), false, names, new ArrayList<>(), new ArrayList<>(), List.of(), Map.of());
  }

  /** With the units that the file names, if it names any that could be read. */
  Reading in(Optional<Optional<UnitSystem>> read) {
    return new Reading(
        read.orElse(Optional.empty()), read.isEmpty(), names, steels, oldWords, steps, curves);
  }

  /** With steps so far. */
  Reading amid(List<Optional<Step.Kind>> these) {
    return new Reading(units, unitsToldWrong, names, steels, oldWords, these, curves);
  }

  /** With the curves that heats may name. */
  Reading with(Map<String, Optional<LoggedCurve>> these) {
    return new Reading(units, unitsToldWrong, names, steels, oldWords, steps, these);
  }

  /** The number of the step that is being read. */
  int step() {
    return steps.size();
  }
}
