package seamsoak.pairing;

import java.util.List;

/**
 * A change that makes a pair go together better, worked out by checking the pair anew.
 *
 * @param change what to do
 * @param value its number, in the unit given
 * @param unit of it; blank where there is none
 * @param rating of the pair then
 * @param better checks that it improves
 */
public record Remedy(String change, Double value, String unit, Rating rating, List<String> better) {
  public Remedy {
    better = List.copyOf(better);
  }
}
