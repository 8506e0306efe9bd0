package seamsoak.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import seamsoak.soak.SoakAdvice;
import seamsoak.soak.SoakAdvice.OptionRemark;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.unit.UnitSystem;
import seamsoak.words.Amounts;
import seamsoak.words.GrainWords;
import seamsoak.words.beside.WhatIfWords.Costs;

/** The soaks side by side. */
record SoakTable(SoakAdvice soak, UnitSystem units) {
  private static final int TABLE_STEP = 20;

  private Amounts amounts() {
    return new Amounts(units);
  }

  private boolean hasBand() {
    return soak.samples() > 0;
  }

  boolean noneNeeded() {
    return soak.recommended().filter(r -> r.minutes() == 0).isPresent();
  }

  /** All of them, each with what it costs. */
  Table whatIf() {
    return Columns.of(soak.options(), units)
        .heat("at", SoakOption::temperatureC)
        .words("likely", o -> minutesCell(o.minutes()))
        .words("9 of 10", o -> hasBand() ? minutesCell(o.minutesNineOfTen()) : "-")
        .lengthIfKnown("flats", o -> Costs.of(o, soak).flatsMm())
        .lengthIfKnown("sides", o -> Costs.of(o, soak).sidesMm())
        .numberIfKnown("grain", 1, o -> Costs.of(o, soak).grain())
        .captioned(
            "Minutes in the likely case and in nine of ten, and what "
                + (Costs.sure(soak) ? "the longer" : "the likely")
                + " time costs each flat and each side in scale and soft skin, ASTM grain size"
                + " number");
  }

  /** The soaks that are listed, each with what it costs. */
  Table table() {
    return Columns.of(listed(), units)
        .heat("at", SoakOption::temperatureC)
        .words("likely", o -> minutesCell(o.minutes()))
        .words("half", o -> hasBand() ? minutesCell(o.minutesHalf()) : "-")
        .words("9 of 10", o -> hasBand() ? minutesCell(o.minutesNineOfTen()) : "-")
        .lengthIfKnown("flats", o -> sum(o.metalLossMm(), o.softMm()))
        .lengthIfKnown("sides", o -> sum(o.metalLossMm(), o.sideSoftMm()))
        .numberIfKnown("grain", 1, SoakOption::grainAstm)
        .words("", this::mark)
        .captioned(
            "Soaks that clear the lines of the finished blade: minutes held at heat in the likely"
                + " case, "
                + (hasBand()
                    ? "that do in half of such billets and in nine of ten ("
                        + soak.samples()
                        + " cases tried)"
                    : "no other case tried")
                + ", what each flat and each"
                + " side loses to scale and soft skin, ASTM grain size number (small is coarse; "
                + GrainWords.GIVE_OR_TAKE
                + ")");
  }

  /** Minutes of which nothing is known but that they are more than a day. */
  private static String minutesCell(Optional<Double> minutes) {
    return minutes.map(m -> Long.toString((long) Math.ceil(m))).orElse(">24 h");
  }

  private static Optional<Double> sum(Optional<Double> one, Optional<Double> other) {
    return one.flatMap(a -> other.map(b -> a + b));
  }

  private List<SoakOption> listed() {
    return soak.options().stream().filter(this::listed).toList();
  }

  /** What the marks in the table stand for, as far as they are used. */
  String legend() {
    String used = listed().stream().map(this::mark).collect(Collectors.joining());
    String legend =
        Stream.of(
                "* recommended",
                "> longer than the " + amounts().time(soak.mostMinutes()) + " allowed",
                "f above the forging limit, " + amounts().heat(soak.highestForgingC()),
                "b above the burning line, " + amounts().heat(soak.burningC()),
                "h above the highest you allow")
            .filter(meaning -> used.indexOf(meaning.charAt(0)) >= 0)
            .collect(Collectors.joining("; "));
    return legend.isEmpty() ? "" : legend + ".";
  }

  private boolean listed(SoakOption o) {
    return recommends(o)
        || o.minutes().isPresent() && Math.round(o.temperatureC()) % TABLE_STEP == 0;
  }

  private boolean recommends(SoakOption o) {
    return soak.recommended()
        .filter(r -> r.minutes() > 0 && r.temperatureC() == o.temperatureC())
        .isPresent();
  }

  private String mark(SoakOption o) {
    String limit =
        o.temperatureC() > soak.burningC()
            ? "b"
            : o.temperatureC() > soak.highestForgingC() ? "f" : "";
    boolean own = o.remarks().contains(OptionRemark.ABOVE_WISH);
    return (recommends(o) ? "*" : "") + (o.clears() ? "" : ">") + limit + (own ? "h" : "");
  }
}
