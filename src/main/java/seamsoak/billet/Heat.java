package seamsoak.billet;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import seamsoak.billet.HeatDone.AsPlanned;
import seamsoak.billet.HeatDone.Held;
import seamsoak.billet.HeatDone.How;
import seamsoak.billet.HeatDone.Logged;
import seamsoak.unit.Temperature;
import seamsoak.unit.TimeSpan;

/**
 * One stay in the fire, or several alike.
 *
 * @param at temperature of the fire
 * @param hold time at it, counted from when the core has reached it
 * @param times how many alike, one after the other
 * @param rise time for the core to come up, if stated
 * @param cool how it cools afterwards, if stated
 * @param done those of them that were done, the first first
 */
public record Heat(
    Temperature at,
    TimeSpan hold,
    int times,
    Optional<TimeSpan> rise,
    Optional<Cooling> cool,
    List<HeatDone> done) {
  public Heat {
    done = List.copyOf(done);
  }

  /** The rise stated, or the default. */
  public TimeSpan riseTaken() {
    return rise.orElse(Defaults.RISE);
  }

  /** How each goes, those first that were done. */
  public List<How> each() {
    return IntStream.range(0, times)
        .mapToObj(i -> i < done.size() ? done.get(i).how() : new AsPlanned())
        .toList();
  }

  /** The hottest it gets in any of them. */
  public Temperature hottest() {
    return Collections.max(peaks(), Comparator.comparingDouble(Temperature::kelvin));
  }

  /** The hottest it gets in each. */
  public List<Temperature> peaks() {
    return each().stream().map(this::peak).toList();
  }

  private Temperature peak(How how) {
    if (how instanceof Held h) {
      return h.at();
    }
    return how instanceof Logged l ? l.curve().hottest() : at;
  }
}
