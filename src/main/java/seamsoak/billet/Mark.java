package seamsoak.billet;

import java.util.List;
import java.util.Optional;
import seamsoak.data.Place;

/**
 * What every step has.
 *
 * @param number counted from 1
 * @param place where it stands in the file
 * @param seen what the smith saw after it
 * @param note words of the smith's own, if any
 * @param done how it came out, where the file says so; the step itself is then as it was done
 */
public record Mark(
    int number, Place place, List<Seen> seen, Optional<String> note, Optional<StepDone> done) {
  public Mark {
    seen = List.copyOf(seen);
  }
}
