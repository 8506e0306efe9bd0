package seamsoak.words;

import java.util.List;
import java.util.stream.Stream;
import seamsoak.single.Decarburization;
import seamsoak.single.HeatRemark;
import seamsoak.single.Migration;
import seamsoak.unit.UnitSystem;

/** One heat: carbon across a seam, the skin it leaves, what else to know of it. */
public record SingleWords(UnitSystem units) {
  /** Too little carbon to speak of, wt%. */
  private static final double LEAST_PCT = 0.005;

  private Amounts amounts() {
    return new Amounts(units);
  }

  /** Where the carbon of two layers has gone. */
  public String moved(Migration migration) {
    Migration.Layer a = migration.first();
    Migration.Layer b = migration.second();
    boolean toSecond = a.meanCarbonPct() < a.startCarbonPct();
    Migration.Layer giver = toSecond ? a : b;
    Migration.Layer taker = toSecond ? b : a;
    return after(migration.minutes(), migration.temperatureC())
        + (giver.startCarbonPct() - giver.meanCarbonPct() < LEAST_PCT
            ? " hardly any carbon has moved."
            : " %s goes from %s to %s %% carbon and %s from %s to %s %%, each the mean of its layer."
                .formatted(
                    giver.steel(),
                    Amounts.percent(giver.startCarbonPct()),
                    Amounts.percent(giver.meanCarbonPct()),
                    taker.steel(),
                    Amounts.percent(taker.startCarbonPct()),
                    Amounts.percent(taker.meanCarbonPct())));
  }

  /** What of it is in solution where chromium carbide holds the rest. */
  public List<String> dissolved(Migration migration) {
    return Stream.of(migration.first(), migration.second())
        .flatMap(l -> l.dissolved().stream().map(d -> dissolved(l, d, migration.temperatureC())))
        .toList();
  }

  private String dissolved(Migration.Layer l, Migration.Dissolved d, double celsius) {
    if (d.mostPct() < LEAST_PCT) {
      return "In %s all but a trace of that lies as chromium carbide: at %s hardly any dissolves beside it."
          .formatted(l.steel(), amounts().heat(celsius));
    }
    return ("In %s %s %% of that is dissolved and %s %% lies as chromium carbide, at the seam %s and"
            + " %s %%: at %s no more than %s %% dissolves beside it.")
        .formatted(
            l.steel(),
            Amounts.percent(d.meanPct()),
            Amounts.percent(l.meanCarbonPct() - d.meanPct()),
            Amounts.percent(d.seamPct()),
            Amounts.percent(l.seamCarbonPct() - d.seamPct()),
            amounts().heat(celsius),
            Amounts.percent(d.mostPct()));
  }

  private String after(double minutes, double celsius) {
    return "After " + amounts().stated(minutes) + " at " + amounts().heat(celsius);
  }

  /** How long it would take to even out. */
  public String even(Migration migration) {
    return migration
        .minutesToEven90()
        .map(m -> "Nine tenths of the way to even takes " + amounts().time(m) + " at that heat.")
        .orElse("The layers are even already, or take more than 1000 h at that heat to get there.");
  }

  /** What scale and the fire have taken. */
  public String taken(Decarburization skin) {
    return after(skin.minutes(), skin.temperatureC())
        + (" with the face %s, scale has taken %s off %s and the skin below, with less than 90 %% of"
                + " its carbon, is %s deep.")
            .formatted(
                skin.edge() + held(skin),
                amounts().millimetres(skin.metalLossMm()),
                skin.steel(),
                amounts().millimetres(skin.depthMm().to90Pct()));
  }

  private static String held(Decarburization skin) {
    return skin.atmosphere().equals("unstated")
        ? ""
        : " in "
            + (skin.atmosphere().equals("flame") ? "a flame" : skin.atmosphere().replace('-', ' '));
  }

  /** What that may be. */
  public String band(Decarburization skin) {
    Decarburization.Band b = skin.band();
    return "It may be a skin of %s, a rim of ferrite of %s, and %s of metal%s."
        .formatted(
            span(b.to90PctLow(), b.to90PctHigh()),
            span(b.ferriteRimMmLow(), b.ferriteRimMmHigh()),
            span(b.metalLossMmLow(), b.metalLossMmHigh()),
            skin.atmosphere().equals("unstated")
                ? ": how compact the scale grows decides, so say what it is held in"
                : "");
  }

  private String span(double low, double high) {
    String from = amounts().millimetres(low);
    String to = amounts().millimetres(high);
    return from.equals(to) ? from : from + " to " + to;
  }

  /** What the face itself has left. */
  public String face(Decarburization skin) {
    return "Carbon at the face: %s %%, %s %% before; %s."
        .formatted(
            Amounts.percent(skin.surfaceCarbonPct()),
            Amounts.percent(skin.startCarbonPct()),
            skin.ferriteRimMm() > 0
                ? "a rim of ferrite " + amounts().millimetres(skin.ferriteRimMm()) + " deep"
                : "no rim of ferrite");
  }

  public String remark(HeatRemark r) {
    return switch (r.what()) {
      case MELTS -> above(r, "begins to melt");
      case BURNS -> above(r, "may burn");
      case NO_AUSTENITE ->
          r.steel()
              + " holds no austenite at "
              + amounts().heat(r.celsius())
              + ", so it dissolves little carbon: the estimate is rough.";
      case BINDS_CARBON ->
          r.steel()
              + " binds carbon in chromium carbide: of what it is told to have, little is in"
              + " solution, the rest lies as carbide near the face or seam, and the amounts are"
              + " rough.";
      case UNKNOWN ->
          r.steel()
              + " is of unknown make and is told as the likeliest that it may be; steels "
              + r.steel()
              + " has the others, and the test to do first.";
    };
  }

  private String above(HeatRemark r, String what) {
    return r.steel()
        + " "
        + what
        + " at about "
        + amounts().heat(r.limitCelsius())
        + ": "
        + amounts().heat(r.celsius())
        + " is above that.";
  }
}
