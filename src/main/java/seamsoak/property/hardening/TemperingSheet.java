package seamsoak.property.hardening;

import java.util.List;
import java.util.OptionalDouble;
import seamsoak.source.Standing;

/**
 * One published table of hardness against tempering heat.
 *
 * @param steel id of the steel
 * @param sheet which of several tables for that steel
 * @param hours length of each temper; assumed where the standing of the hours says so
 * @param quenchedHrc hardness before the temper, if the table has it
 * @param points the tempers, coolest first
 * @param source key of the source
 */
public record TemperingSheet(
    String steel,
    String sheet,
    double hours,
    OptionalDouble quenchedHrc,
    List<Point> points,
    String source) {
  public TemperingSheet {
    points = List.copyOf(points);
  }

  /**
   * One temper of the table.
   *
   * @param celsius tempering heat
   * @param hrc hardness; the middle where the table gives two figures
   * @param standing how well it is known
   */
  public record Point(double celsius, double hrc, Standing standing) {}
}
