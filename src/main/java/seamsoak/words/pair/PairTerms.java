package seamsoak.words.pair;

import java.util.stream.Stream;
import seamsoak.pairing.Finding;
import seamsoak.pairing.Why;
import seamsoak.steel.TemperatureRange;
import seamsoak.unit.TemperatureDifference;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;

/**
 * What sentences about two steels are made of.
 *
 * @param units that are shown
 * @param first name of the first steel
 * @param second of the second
 */
public record PairTerms(UnitSystem units, String first, String second) {
  static <W extends Why> W why(Finding f, Class<W> type) {
    return type.cast(f.why());
  }

  /** A sentence that begins with each steel and its value; the rest follows. */
  String told(Finding f, int decimals, String form, Object... rest) {
    Stream<Object> begins =
        Stream.of(
            first,
            Amounts.number(f.first(), decimals),
            second,
            Amounts.number(f.second(), decimals));
    return form.formatted(Stream.concat(begins, Stream.of(rest)).toArray());
  }

  String ranges(Finding f, String does, String again, String ofFirst, String ofSecond) {
    TemperatureRange one = f.firstRange().orElseThrow();
    TemperatureRange other = f.secondRange().orElseThrow();
    return first
        + " "
        + does
        + between(one)
        + ofFirst
        + ", "
        + second
        + " "
        + again
        + between(other)
        + ofSecond
        + (f.gap() > 0
            ? ": these miss each other by " + apart(f.gap())
            : ": both from "
                + between(
                    new TemperatureRange(
                        Math.max(one.lowC(), other.lowC()), Math.min(one.highC(), other.highC()))))
        + ".";
  }

  private String between(TemperatureRange range) {
    return new Amounts(units).between(range);
  }

  /** The steel of the greater value. */
  String more(Finding f) {
    return f.first() > f.second() ? first : second;
  }

  String less(Finding f) {
    return f.first() > f.second() ? second : first;
  }

  String celsius(double celsius) {
    return new Amounts(units).heat(celsius);
  }

  String length(double metres) {
    return new Amounts(units).length(metres);
  }

  String apart(double kelvin) {
    return new TemperatureDifference(kelvin).format(units);
  }
}
