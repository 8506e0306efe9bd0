package seamsoak.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.pairing.MayBe;
import seamsoak.pairing.MayBe.Grade;
import seamsoak.pairing.MayBe.Span;
import seamsoak.pairing.PairAdvice;
import seamsoak.schedule.Check;
import seamsoak.unit.UnitSystem;

/**
 * Of stock of unknown make: what it may be, from where to where that goes, and what to do first.
 */
public record UnknownMakeWords(UnitSystem units) {
  /** All of it. */
  public List<String> all(MayBe of) {
    return List.of(says(of), "First of all: " + first(of));
  }

  /** As short as a summary wants it. */
  String briefly(MayBe of) {
    return Sentence.capital(of.stock())
        + " is of unknown make, reckoned with as "
        + of.reckonedAs()
        + of.hardenC().map(h -> ": it may want to be hardened from " + heats(h)).orElse("")
        + "; test it first.";
  }

  /** What it may be, and from where to where that goes. */
  String says(MayBe of) {
    return may(of) + " " + spans(of);
  }

  /** What it may be, and with what it is reckoned. */
  private String may(MayBe of) {
    return of.stock()
        + " is stock of unknown make, no one steel: it may be "
        + of.grades().stream().map(Grade::id).collect(Collectors.joining(", "))
        + ", or none of these ("
        + of.standing()
        + "). It is reckoned with as "
        + of.reckonedAs()
        + " until a test says otherwise.";
  }

  /** From the least to the most of the grades. */
  private String spans(MayBe of) {
    return "By what it may be it holds "
        + carbon(of)
        + ", begins to change from "
        + heats(of.ac1C())
        + Stream.of(
                of.hardenC().map(h -> ", hardens from " + heats(h)),
                of.edgeHrc()
                    .map(
                        h ->
                            ", and comes out of its quench with "
                                + hardness(h)
                                + " HRC at a thin edge"))
            .flatMap(Optional::stream)
            .collect(Collectors.joining())
        + ".";
  }

  static String carbon(MayBe of) {
    double low = of.carbonPct().low();
    return (low > 0 ? Amounts.percent(low) + " to " : "up to ")
        + Amounts.percent(of.carbonPct().high())
        + " % carbon";
  }

  private static String hardness(Span hrc) {
    String low = Amounts.number(hrc.low(), 0);
    String high = Amounts.number(hrc.high(), 0);
    return low.equals(high) ? "about " + low : low + " to " + high;
  }

  /** What to do before any of it is used. */
  String first(MayBe of) {
    return of.test()
        + of.hardenC().map(h -> " " + Sentence.capital(coupons(h)) + ".").orElse("")
        + " Then write its grade, or better its analysis, for its name.";
  }

  /** Pieces hardened and broken. */
  private String coupons(Span hardenC) {
    return "harden pieces of it in oil, some heats between "
        + amounts().heat(hardenC.low())
        + " and "
        + amounts().heat(hardenC.high())
        + ", break them, and take the coolest on which a new file skates and whose grain is like gray"
        + " silk";
  }

  /** The same for one step of a schedule. */
  String coupons(Check.Coupons check) {
    return "before any of it "
        + coupons(check.hardenC())
        + ": what "
        + check.stock()
        + " is, nobody knows, and the heat of this step is that of "
        + check.reckonedAs();
  }

  /** A pair by each grade that the stock may be. */
  public String pair(PairAdvice.Remark.UnknownMake remark) {
    return may(remark.mayBe())
        + " The pair "
        + remark.as().stream()
            .map(
                a ->
                    "as "
                        + a.grade()
                        + ": "
                        + a.rating().word()
                        + a.title().map(t -> ", by " + t).orElse(""))
            .collect(Collectors.joining("; "))
        + ". First of all: "
        + first(remark.mayBe());
  }

  private String heats(Span c) {
    return amounts().between(c.low(), c.high());
  }

  private Amounts amounts() {
    return new Amounts(units);
  }
}
