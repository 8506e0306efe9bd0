package seamsoak.pairing;

import java.util.List;

/**
 * A change that makes a pair go together better, worked out by checking the pair anew.
 *
 * @param change what to do
 * @param setting how the pair is put together then
 * @param rating of the pair then
 * @param better titles of the checks that it improves
 */
public record Remedy(Change change, PairSetting setting, Rating rating, List<String> better) {
  public Remedy {
    better = List.copyOf(better);
  }

  /** What is made otherwise. */
  public enum Change {
    CLOSED_STACK,
    LOWER_WELDING_HEAT,
    THICKER_LAYERS
  }
}
