package seamsoak.billet.file;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import seamsoak.unit.UnitSystem;

/**
 * A key of an object of a billet file as somebody fills it in.
 *
 * @param name as it stands in the file
 * @param needed whether it has to be there
 * @param us how its value is written in US units
 * @param metric the same in metric ones
 * @param meaning what it means, in a sentence without its capital
 * @param way how it is filled in
 */
public record FormKey(
    String name, boolean needed, String us, String metric, String meaning, Way way) {
  private static final Pattern BARE = Pattern.compile("(0|[1-9][0-9]{0,8})(\\.[0-9]{1,8})?");
  private static final Pattern NARROW = Pattern.compile("([0-9][0-9./-]*)([A-Za-z]+)");

  /** How a value is filled in. */
  public sealed interface Way {}

  /** A quantity or a count. */
  public record Amount() implements Way {}

  /** Words of the smith's own. */
  public record Prose() implements Way {}

  /** A steel by a name or an analysis. */
  public record SteelName() implements Way {}

  /** One of some words. */
  public record OneOf(List<String> words) implements Way {
    public OneOf {
      words = List.copyOf(words);
    }
  }

  /**
   * An object with a form of its own.
   *
   * @param orNone whether the word none may stand in its place
   */
  public record Inside(FormSheet sheet, boolean orNone) implements Way {}

  /** As many as there are of something. */
  public record Each(Way item) implements Way {}

  /** The steps, of which each kind has its own form. */
  public record Steps() implements Way {}

  /** What no form shows. */
  public record Other() implements Way {}

  /** How its value is written in some units, without the quotes of the file. */
  public String example(UnitSystem units) {
    String written = units == UnitSystem.METRIC ? metric : us;
    return written.replaceFirst("^\"(.*)\"$", "$1");
  }

  /** What is filled in as it goes into the file. */
  public static Object written(Way way, String value) {
    return way instanceof Amount ? amount(value) : value;
  }

  /**
   * A plain number without quotes, as a file that names its units has it, and a quantity that a
   * shell wants without a blank with one.
   */
  static Object amount(String value) {
    Matcher narrow = NARROW.matcher(value);
    return BARE.matcher(value).matches()
        ? new BigDecimal(value)
        : narrow.matches() ? narrow.group(1) + " " + narrow.group(2) : value;
  }
}
