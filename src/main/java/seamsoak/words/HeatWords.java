package seamsoak.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import seamsoak.billet.LoggedCurve.Tip;
import seamsoak.data.Fault;
import seamsoak.heatlog.Credit;
import seamsoak.heatlog.LogQuestion;
import seamsoak.heatlog.LogRemark;
import seamsoak.heatlog.Readings;
import seamsoak.heatlog.RealHeat;
import seamsoak.heatlog.Scale;
import seamsoak.single.Decarburization;
import seamsoak.unit.UnitSystem;

/** A real heat: what its log leaves open, what it was worth, what was left out and taken. */
public record HeatWords(UnitSystem units) {
  private static final Sayings<HeatWords, LogQuestion, String> QUESTIONS =
      new Sayings<HeatWords, LogQuestion, String>(LogQuestion.class)
          .of(LogQuestion.WhichColumn.class, (w, q) -> column(q))
          .of(LogQuestion.WhichScale.class, (w, q) -> scale(q))
          .of(
              LogQuestion.WhichTimeUnit.class,
              (w, q) ->
                  "in what unit '%s' counts time, from %s to %s: --time-unit s, min or h"
                      .formatted(shown(q.column()), shown(q.first()), shown(q.last())))
          .of(
              LogQuestion.WhichInterval.class,
              (w, q) -> "how far apart its rows are, which have no time: --interval 10s")
          .of(
              LogQuestion.WhichDecimals.class,
              (w, q) ->
                  "whether %s in '%s' has decimals or thousands: --decimal dot or comma"
                      .formatted(shown(q.cell()), shown(q.column())))
          .of(
              LogQuestion.WhereTip.class,
              (w, q) -> "where the tip of the couple was: --tip steel, surface or air")
          .of(
              LogQuestion.WhenLoaded.class,
              (w, q) ->
                  "when the piece went into the kiln, from the log's first row: --loaded 4min, 0min"
                      + " if it was in")
          .of(
              LogQuestion.HowThick.class,
              (w, q) -> "how thick the piece is that lags behind the air: --section 1in")
          .complete();

  private static final Sayings<HeatWords, LogRemark, String> REMARKS =
      new Sayings<HeatWords, LogRemark, String>(LogRemark.class)
          .of(
              LogRemark.NeverHot.class,
              (w, r) ->
                  "It reached %s; below %s carbon hardly moves, so nothing is credited."
                      .formatted(w.amounts().heat(r.peakC()), w.amounts().heat(r.startC())))
          .of(
              LogRemark.FewRows.class,
              (w, r) ->
                  "Its rows are %s apart: what happened between them is taken to be straight."
                      .formatted(w.amounts().stated(r.secondsApart() / 60)))
          .of(
              LogRemark.BeyondTolerance.class,
              (w, r) ->
                  "The tolerance of %s is stated to %s; up to %s the same is taken."
                      .formatted(r.wire(), w.amounts().heat(r.toC()), w.amounts().heat(r.peakC())))
          .of(
              LogRemark.MayRot.class,
              (w, r) ->
                  "%s between %s and %s: in gas poor in oxygen a couple of type K rots there, and"
                          .formatted(
                              w.amounts().stated(r.minutes()),
                              w.amounts().heat(800),
                              w.amounts().heat(1050))
                      + " reads low by far more than the band says.")
          .of(
              LogRemark.Falls.class,
              (w, r) ->
                  "At %s it falls from %s to %s from one row to the next, faster than steel cools:"
                          .formatted(
                              w.amounts().stated(r.minute()),
                              w.amounts().heat(r.fromC()),
                              w.amounts().heat(r.toC()))
                      + " if the couple was out or open, what follows counts too little.")
          .of(
              LogRemark.OtherColumns.class,
              (w, r) ->
                  "'%s' was read; the log holds %d other %s."
                      .formatted(
                          shown(r.read()),
                          r.others(),
                          r.others() == 1 ? "temperature" : "temperatures"))
          .of(
              LogRemark.GapsDecide.class,
              (w, r) ->
                  "Most of it lies in gaps, %s at their cooler ends: nobody knows whether the piece"
                          .formatted(w.amounts().stated(r.minutes()))
                      + " was in the fire then.")
          .complete();

  private Amounts amounts() {
    return new Amounts(units);
  }

  private static String shown(String text) {
    return Fault.shown(text);
  }

  /** All that a log leaves open, in one sentence. */
  public String open(String file, List<LogQuestion> questions) {
    return file
        + " leaves open "
        + questions.stream().map(q -> QUESTIONS.say(this, q)).collect(Collectors.joining("; "));
  }

  private static String column(LogQuestion.WhichColumn q) {
    String channels =
        q.channels().stream()
            .limit(8)
            .map(c -> "'%s' (up to %s)".formatted(shown(c.name()), Amounts.number(c.highest(), 0)))
            .collect(Collectors.joining(", "));
    return q.told()
            .map(t -> "which column is meant by '" + shown(t) + "', as none of its")
            .orElse("which of its")
        + " temperatures is the piece's: --column with one of "
        + channels;
  }

  private static String scale(LogQuestion.WhichScale q) {
    String may =
        q.scales().stream()
            .sorted()
            .map(s -> s.name().substring(0, 1))
            .collect(Collectors.joining(" or "));
    return "in what unit '%s' is, up to %s: --unit %s"
        .formatted(shown(q.channel().name()), Amounts.number(q.channel().highest(), 0), may);
  }

  /** The answer. */
  public String worth(RealHeat heat) {
    Credit credit = heat.credit();
    if (credit.minutes() == 0) {
      return "This heat moved no carbon to speak of.";
    }
    return "This heat was worth %s at %s, %s to %s."
        .formatted(
            minutes(credit.minutes()),
            amounts().heat(heat.plannedC()),
            minutes(credit.low()),
            minutes(credit.high()));
  }

  private String minutes(double minutes) {
    return minutes < 0.5 ? Math.round(60 * minutes) + " s" : amounts().stated(minutes);
  }

  /** How hot it was, and where. */
  public String course(RealHeat heat) {
    String who =
        switch (heat.query().tip().orElseThrow()) {
          case STEEL -> "The piece";
          case SURFACE -> "The face of the piece";
          case AIR -> "The middle of the piece, which lagged behind the air,";
        };
    return "%s was above %s for %s and reached %s; the log was read from '%s' in %s."
        .formatted(
            who,
            amounts().heat(heat.startC()),
            minutes(heat.hotMinutes()),
            amounts().heat(heat.peakC()),
            shown(heat.log().column()),
            scaleName(heat.log().scale()));
  }

  private static String scaleName(Scale scale) {
    return scale.name().substring(0, 1) + scale.name().substring(1).toLowerCase(Locale.ROOT);
  }

  /** Scale, skin and grain. */
  public String face(RealHeat heat) {
    if (heat.face().isEmpty()) {
      return "";
    }
    Decarburization face = heat.face().get();
    return "With the face %s, scale took %s off %s, the skin below is %s deep%s."
        .formatted(
            face.edge(),
            amounts().millimetres(face.metalLossMm()),
            face.steel(),
            amounts().millimetres(face.depthMm().to90Pct()),
            heat.grainAstm()
                .map(g -> ", and grains are about ASTM " + GrainWords.band(g))
                .orElse(""));
  }

  /** What the band is made of. */
  public List<String> doubts(RealHeat heat) {
    return heat.credit().doubts().stream()
        .map(
            d ->
                "%s: %s to %s."
                    .formatted(
                        switch (d.source()) {
                          case THERMOMETER ->
                              "The thermocouple, "
                                  + heat.couple().written()
                                  + (heat.query().tip().orElseThrow() == Tip.SURFACE
                                      ? ", on the face"
                                      : "");
                          case GAPS ->
                              "Gaps, of which "
                                  + minutes(heat.credit().gapMinutes())
                                  + " are counted at their cooler ends";
                          case HEATING -> "How fast the piece follows the air";
                        },
                        minutes(d.low()),
                        minutes(d.high())))
        .toList();
  }

  /** What of the log counts for nothing. */
  public List<String> leftOut(RealHeat heat) {
    List<String> all = new ArrayList<>();
    heat.curve()
        .gaps()
        .forEach(
            g ->
                all.add(
                    "No readings from %s to %s, between %s and %s."
                        .formatted(
                            amounts().stated(g.fromMinute()),
                            amounts().stated(g.toMinute()),
                            amounts().heat(g.coolerC()),
                            amounts().heat(g.hotterC()))));
    for (Readings.Why why : Readings.Why.values()) {
      long count = heat.in().count(why);
      if (count > 0) {
        all.add(
            count
                + (count == 1 ? " reading" : " readings")
                + switch (why) {
                  case SPIKE -> " far from all around it.";
                  case OPEN -> " without a number, the couple open.";
                  case BEYOND_RANGE -> " beyond what the couple can read.";
                });
      }
    }
    if (heat.log().events() > 0) {
      all.add(heat.log().events() + " rows that hold no reading.");
    }
    return all;
  }

  /** What was taken for want of a word. */
  public List<String> taken(RealHeat heat) {
    return heat.taken().stream().map(t -> taken(t, heat)).toList();
  }

  private String taken(RealHeat.Taken taken, RealHeat heat) {
    return switch (taken) {
      case COUPLE -> "The couple is " + heat.couple().written() + " (--couple).";
      case PLANNED ->
          "The plan is the heat's own hold, " + amounts().heat(heat.plannedC()) + " (--planned).";
      case STEEL -> "The steel is " + heat.query().steel().id() + " (--steel).";
      case LOADED -> "The piece was in from the log's first row (--loaded).";
      case REMOVED -> "The piece was in to the log's end (--removed).";
      case COLD -> "The piece was cold when it went in.";
      case OPEN_FACE -> "The face was bare to the fire (--edge).";
    };
  }

  public List<String> remarks(RealHeat heat) {
    List<String> all = new ArrayList<>();
    heat.hot().forEach(r -> all.add(new SingleWords(units).remark(r)));
    heat.remarks().forEach(r -> all.add(REMARKS.say(this, r)));
    return all;
  }
}
