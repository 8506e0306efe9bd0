package seamsoak.trace;

import java.util.List;
import java.util.Map;
import seamsoak.source.Range;

/**
 * What the numbers of an answer rest on.
 *
 * @param entries in the order of the calculation
 */
public record Trace(List<Entry> entries) {
  /** Of an answer whose sources nobody asked for. */
  public static final Trace NONE = new Trace(List.of());

  public Trace {
    entries = List.copyOf(entries);
  }

  /**
   * One correlation, one steel's figures or one setting.
   *
   * @param name its name in the tables
   * @param gives the quantity it gives
   * @param unit unit of that quantity; blank where a sentence tells it
   * @param source key of its source, or several with commas between; blank for the user's own
   * @param citation what that stands for
   * @param standing how well its numbers are known
   * @param terms where they differ: which are known how well
   * @param notes what the tables say of single numbers
   * @param ranges within which it is vouched for
   * @param statedError the error its source states, or that it states none
   * @param exceeded the ranges that this answer left
   */
  public record Entry(
      String name,
      String gives,
      String unit,
      String source,
      String citation,
      String standing,
      Map<String, List<String>> terms,
      List<String> notes,
      List<Range> ranges,
      String statedError,
      List<Outside> exceeded) {}

  /**
   * A range that was left.
   *
   * @param by which steel or which heat left it
   * @param quantity such as {@code Cr} or {@code temperature}
   * @param unit its unit
   * @param value the value that was used
   * @param low lowest value of the range
   * @param high highest value of the range
   */
  public record Outside(
      String by, String quantity, String unit, double value, double low, double high) {}
}
