package seamsoak.words.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import seamsoak.pairing.PairAdvice;
import seamsoak.pairing.PairSetting;
import seamsoak.pairing.Rating;
import seamsoak.pairing.Remedy;
import seamsoak.steel.Deviation;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.UnknownMakeWords;

/**
 * What would make a pair work, what was assumed of it and what else to know of its steels.
 *
 * @param units that are shown
 */
public record RemedyWords(UnitSystem units) {
  /** What would make a pair work, a sentence each, and which grade would. */
  public List<String> all(PairAdvice advice) {
    List<String> all = new ArrayList<>();
    for (Remedy r : advice.remedies()) {
      all.add(
          "%s: %s %s the better for it; the pair %s."
              .formatted(
                  change(r, advice),
                  r.better().stream().distinct().collect(Collectors.joining(", ")),
                  r.better().size() == 1 ? "is" : "are",
                  r.rating() == Rating.FITS
                      ? "then fits"
                      : r.rating() == advice.rating()
                          ? "stays " + r.rating().word() + " for the rest"
                          : "is then rated " + r.rating().word()));
    }
    List<String> near = advice.insteadOfSecond().stream().map(PairAdvice.Near::id).toList();
    all.add(
        near.isEmpty()
            ? "No grade of the table fits with "
                + advice.first()
                + ", not in a closed stack either."
            : "Another grade: of those that fit with %s %s, nearest to %s by analysis %s %s."
                .formatted(
                    advice.first(),
                    advice.insteadOfSecond().get(0).closedStack()
                        ? "in a closed stack, and none does in the open"
                        : "as they are",
                    advice.second(),
                    near.size() == 1 ? "is" : "are",
                    String.join(", ", near)));
    return all;
  }

  /** What to do. */
  public String change(Remedy remedy, PairAdvice advice) {
    Amounts amounts = new Amounts(units);
    PairSetting then = remedy.setting();
    return switch (remedy.change()) {
      case CLOSED_STACK -> "Weld it in a closed stack, its edges sealed";
      case LOWER_WELDING_HEAT ->
          "Weld no hotter than " + amounts.heat(then.weldingCelsius().orElseThrow());
      case THICKER_LAYERS ->
          "Begin with layers of %s %s and %s %s or thicker, and do not draw them out"
              .formatted(
                  amounts.length(then.firstMetres()),
                  advice.first(),
                  amounts.length(then.secondMetres()),
                  advice.second());
    };
  }

  /** What nobody stated. */
  public static String assumed(PairAdvice.Assumption assumption) {
    return switch (assumption) {
      case LAYERS_OF_PRACTICE -> "layers as usual for this pair";
      case LAYERS -> "layers";
      case SECTION -> "section at hardening";
      case WELD_HEATS -> "three weld heats of 5 min, no drawing between";
    };
  }

  public String remark(PairAdvice.Remark remark) {
    if (remark instanceof PairAdvice.Remark.UnknownMake u) {
      return new UnknownMakeWords(units).pair(u);
    }
    if (remark instanceof PairAdvice.Remark.OutsideGrade o) {
      Deviation d = o.deviation();
      return "%s: %s %s %% is outside what %s allows, %s %s %%."
          .formatted(
              o.steel(),
              d.element().symbol(),
              Amounts.plain(d.percent()),
              o.designation(),
              d.tooLittle() ? "at least" : "at most",
              Amounts.plain(d.limit()));
    }
    PairAdvice.Remark.WithinGrades w = (PairAdvice.Remark.WithinGrades) remark;
    return "%s keeps to the limits of %s: write \"%s: %s\" to reckon with the heats published for it."
        .formatted(w.steel(), String.join(", ", w.grades()), w.grades().get(0), w.steel());
  }
}
