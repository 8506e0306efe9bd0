package seamsoak.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import seamsoak.plan.Advice;
import seamsoak.soak.Input;
import seamsoak.soak.Remedies;
import seamsoak.soak.SoakAdvice.OptionRemark;
import seamsoak.soak.SoakCost;
import seamsoak.soak.SoakNote;
import seamsoak.soak.SoakReason;
import seamsoak.state.LineReport;
import seamsoak.unit.Length;
import seamsoak.unit.TimeSpan;
import seamsoak.unit.UnitSystem;

/** What is said of a soak. */
public record SoakWords(UnitSystem units) {
  private static final Sayings<SoakWords, SoakNote, String> NOTES =
      new Sayings<SoakWords, SoakNote, String>(SoakNote.class)
          .of(SoakNote.Plain.class, SoakWords::of)
          .of(SoakNote.CarbonUnknown.class, (w, c) -> of(c))
          .of(SoakNote.SeenWeighs.class, (w, n) -> w.looks().of(n))
          .of(SoakNote.NoneClears.class, SoakWords::of)
          .of(SoakNote.Remedy.class, SoakWords::of)
          .of(SoakNote.Gone.class, SoakWords::of)
          .of(SoakNote.LastToClear.class, SoakWords::of)
          .of(SoakNote.LeftOut.class, SoakWords::of)
          .of(SoakNote.LeastWidth.class, SoakWords::of)
          .of(SoakNote.TooFine.class, (w, n) -> w.looks().of(n))
          .of(SoakNote.Narrower.class, SoakWords::of)
          .of(SoakNote.OldWords.class, SoakWords::of)
          .complete();

  private static final String AGAIN =
      ". Etch after it, and soak again only where a line is left: a second soak can always be had,"
          + " and what a soak has cost cannot be undone";

  /** Why it is recommended; no sentence of its own. */
  public String reason(SoakReason reason) {
    return switch (reason.kind()) {
      case NOTHING_SHOWS -> "no line will show in the finished blade";
      case CYCLES_CLEAR ->
          "the normalizing and refining cycles to come clear the lines on their own";
      case BALANCED_BY_HISTORIES -> balanced(reason, " in nine of ten such billets");
      case BALANCED_BY_MIDDLE ->
          balanced(reason, " in the likely case, which half of all billets outlast");
      case BALANCED_BY_LIKELY ->
          balanced(reason, " in the likely case, not in nine of ten") + AGAIN;
      case BALANCED_BY_HALF ->
          balanced(reason, " in half of the billets that need a soak, not in nine of ten") + AGAIN;
      case HOTTEST_ALLOWED ->
          "the hottest that the steels allow for forging, as long as you allow: where a line shows"
              + " nothing shorter clears it in half of such billets";
    };
  }

  private String balanced(SoakReason reason, String howSure) {
    return "it clears the lines within "
        + TimeSpan.ofMinutes(reason.mostMinutes()).format(units)
        + howSure
        + ", and costs least in time, grain and skin together: "
        + reason.cost().map(this::cost).orElse("")
        + reason
            .coolest()
            .map(
                c ->
                    "; the coolest that would do, "
                        + temperature(c.temperatureC())
                        + ", takes "
                        + cost(c))
            .orElse("; it is the coolest that would do");
  }

  private String cost(SoakCost cost) {
    return TimeSpan.ofMinutes(cost.minutes()).format(units)
        + Amounts.format(", grain about ASTM %.1f, ", cost.grainAstm())
        + Length.ofMillimetres(cost.offMm()).format(units)
        + " of scale and soft skin off each flat";
  }

  public String remark(OptionRemark remark) {
    return switch (remark) {
      case ABOVE_BURNING -> "above the burning line: the steel may crumble";
      case ABOVE_FORGING -> "above the forging limit of its steels";
      case ABOVE_WISH -> "above the highest you allow";
      case EATEN_FIRST -> "the fire would eat the billet first";
    };
  }

  public String input(Input input) {
    return switch (input) {
      case MOBILITY -> "speed of carbon";
      case FIRE_TEMPERATURE -> "temperature of the fire";
      case FIRE_TIMES -> "times in the fire";
      case GROUND_DEPTHS -> "ground depths";
      case COVER -> "cover of the faces";
      case FERRITE -> "ferrite that the cooling leaves";
      case STEEL_CARBON -> "carbon of the steels";
      case SCALING -> "scaling";
      case BREADTH -> "breadth that the eye compares";
    };
  }

  private LookWords looks() {
    return new LookWords(units);
  }

  /** What would be better begun otherwise another time. */
  public List<String> nextTime(Advice advice) {
    List<String> all = new ArrayList<>();
    advice.soak().advice().stream()
        .filter(
            n ->
                n instanceof SoakNote.Remedy
                    || n == SoakNote.Plain.GRIND_FIRST
                    || n instanceof SoakNote.Narrower)
        .map(this::note)
        .forEach(all::add);
    advice.preform().map(p -> StageWords.preform(p, units)).ifPresent(all::add);
    return all;
  }

  /** One or two sentences. */
  public String note(SoakNote note) {
    return NOTES.say(this, note);
  }

  private String of(SoakNote.Plain note) {
    return switch (note) {
      case SEEN_WITHOUT_HISTORIES ->
          "What you saw is left out: it takes cases to weigh it, and none were tried.";
      case GRIND_FIRST ->
          "Grinding the faces to clean metal before closing them, next time, comes first.";
      case NO_HISTORIES -> "No cases were tried, so how sure this is cannot be said.";
      case VISIBLE_DECIDES_NOTHING ->
          "What \"visible\" says in the file decides no more: whether a line shows follows from what"
              + " the etch makes of its carbon.";
      case TEST_ETCH ->
          "Etch a ground corner after the soak and before the rest, and write into the file what it"
              + " shows: the next answer goes on from there.";
      case STATES ->
          "How a piece was cooled decides what an etch shows. Air leaves little ferrite and hides a"
              + " line that a slow anneal brings out; hardened there is none, and what shows is"
              + " martensite of less carbon. Only heat moves the carbon, so the soak is for the"
              + " finished blade. An anneal below the critical range changes no ferrite: the cooling"
              + " before it still shows.";
    };
  }

  private String of(SoakNote.OldWords old) {
    return String.join(" ", FileWords.old(old.words()));
  }

  private static String of(SoakNote.CarbonUnknown c) {
    return c.stock()
        + " is stock of unknown make, such as "
        + String.join(", ", c.mayBe())
        + ": its carbon may be anything from "
        + Amounts.percent(c.leastPct())
        + " to "
        + Amounts.percent(c.mostPct())
        + " %, and the cases tried go from end to end.";
  }

  private String of(SoakNote.NoneClears n) {
    return "No soak within what is allowed clears the lines in the likely case"
        + n.withinLongestPct()
            .map(
                p ->
                    Amounts.format("; the hottest allowed clears them in %.0f %%", p)
                        + " of the cases tried.")
            .orElse(".");
  }

  private String of(SoakNote.Remedy r) {
    return measure(r.measure()) + " would " + left(r) + ".";
  }

  private String of(SoakNote.Gone g) {
    return Amounts.format(
        "Of a hundred such billets (%d cases tried) %.0f come out as a blade without a line if"
            + " neither soaked nor cycled, %.0f by the normalizing and refining cycles alone.",
        g.histories(), g.alreadyPct(), g.byCyclesPct());
  }

  private String of(SoakNote.LastToClear l) {
    return "Last to clear is where "
        + SeamWords.cross(l.crossing())
        + ": "
        + taken(l.crossing().minutes())
        + " at "
        + temperature(l.celsius())
        + "; between the crossings "
        + l.line().map(this::taken).orElse("no line shows")
        + ".";
  }

  private String of(SoakNote.LeftOut l) {
    return l.histories()
        + " of "
        + l.of()
        + " cases tried cannot be worked to the end (the metal would be scaled or"
        + " ground away) and are left out.";
  }

  private String of(SoakNote.LeastWidth w) {
    return "At the "
        + SeamWords.says(w.line().joints())
        + " a line of missing carbon is at least "
        + Length.ofMillimetres(w.line().narrowestMm().orElseThrow()).format(units)
        + " wide on the face by now. A hair-thin bright line is nickel, arsenic or copper"
        + " brought up by scale, or oxide: it will not soak out, so stop soaking.";
  }

  private String of(SoakNote.Narrower n) {
    return "What sways the minutes most: "
        + input(n.input())
        + ". What would narrow the band: "
        + narrows(n.input())
        + ".";
  }

  private String measure(SoakNote.Measure measure) {
    return switch (measure) {
      case GRIND_DEEPER ->
          "Grinding "
              + new Length(Remedies.DEEPER_METRES).format(units)
              + " deeper before each closing next time";
      case SHORTER_HEATS -> "Six tenths of the time in the fire next time";
      case DRAW_THINNER -> "Drawing the billet to seven tenths of its thickness before the soak";
    };
  }

  private String left(SoakNote.Remedy r) {
    if (r.minutes().isEmpty()) {
      return "still leave more than 24 h at " + temperature(r.celsius());
    }
    return r.minutes().get() == 0
        ? "leave no line to clear"
        : "leave " + taken(r.minutes()) + " at " + temperature(r.celsius());
  }

  private String taken(LineReport line) {
    return SeamWords.says(line.joints()) + ", " + taken(line.minutes());
  }

  private String taken(Optional<Double> minutes) {
    return minutes
        .map(m -> TimeSpan.ofMinutes(Math.ceil(m)).format(units))
        .orElse("more than 24 h");
  }

  private String temperature(double celsius) {
    return new Amounts(units).heat(celsius);
  }

  private static String narrows(Input input) {
    return switch (input) {
      case MOBILITY -> "nothing that a forge can measure";
      case FIRE_TEMPERATURE -> "a thermocouple beside the work in every heat";
      case FIRE_TIMES -> "a clock: write down how long each heat stays in the fire";
      case GROUND_DEPTHS -> "measure the bar before and after each grinding";
      case COVER -> "break open and etch one test weld made the same way";
      case FERRITE, BREADTH -> "a test etch now: it shows which of the lines you can see";
      case STEEL_CARBON -> "a mill certificate for the steels";
      case SCALING -> "measure the bar before and after one long heat";
    };
  }
}
