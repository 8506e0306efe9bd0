package seamsoak.plan;

import java.util.List;
import java.util.Optional;
import seamsoak.schedule.Heater;

/**
 * What the work takes: time at the fire and stock to begin with.
 *
 * @param heats of the file that are still to be taken
 * @param heatMinutes that they take in the fire, their rise included
 * @param spells of the schedule, soak included, by where the heat comes from
 * @param barMm length that the file as it is gives
 * @param wanted the bar that the blade takes, where its length is stated and nothing is done yet
 * @param stock to be cut
 */
public record Outlay(
    int heats,
    double heatMinutes,
    List<Spell> spells,
    double barMm,
    Optional<Wanted> wanted,
    List<Stock> stock) {
  /** Time in one fire. */
  public record Spell(Heater in, double minutes) {}

  /**
   * The bar at the end, reckoned from the blade.
   *
   * @param bladeMm its length as stated
   * @param endsMm lost at both ends of the bar together
   * @param pieceMm length of each piece of the stack that gives it; empty where none does
   */
  public record Wanted(double bladeMm, double endsMm, Optional<Double> pieceMm) {
    /** Length of the bar. */
    public double barMm() {
      return bladeMm + endsMm;
    }
  }

  /**
   * Pieces alike.
   *
   * @param steel its name
   * @param jacket whether it is wrapped about the tiles
   * @param count how many
   * @param thicknessMm of each
   * @param widthMm of each
   * @param lengthMm of each
   * @param kerfMm lost in each cut
   */
  public record Stock(
      String steel,
      boolean jacket,
      int count,
      double thicknessMm,
      double widthMm,
      double lengthMm,
      double kerfMm) {
    /** Bar of that section that they are cut from, a cut for each. */
    public double totalMm() {
      return count * (lengthMm + kerfMm);
    }
  }
}
