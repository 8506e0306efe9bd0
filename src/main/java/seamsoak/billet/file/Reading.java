package seamsoak.billet.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import seamsoak.billet.Step;

/**
 * What the reading of an entry leans on besides the entry.
 *
 * @param steels looks up the steels that the file names
 * @param steps the kinds of the steps so far, with the one that is being read; none where a kind
 *     could not be read
 */
record Reading(SteelReader steels, List<Optional<Step.Kind>> steps) {
  Reading {
    steps = Collections.unmodifiableList(new ArrayList<>(steps));
  }

  Reading(SteelReader steels) {
    this(steels, List.of());
  }

  /** With steps so far. */
  Reading amid(List<Optional<Step.Kind>> these) {
    return new Reading(steels, these);
  }

  /** The number of the step that is being read. */
  int step() {
    return steps.size();
  }
}
