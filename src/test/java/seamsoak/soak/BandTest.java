package seamsoak.soak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.data.DataFolder;
import seamsoak.plan.Advice;
import seamsoak.plan.PlanAdvisor;
import seamsoak.safety.CautionTable;
import seamsoak.soak.Histories.Sample;
import seamsoak.state.LineReport;
import seamsoak.state.Progress;
import seamsoak.support.Walks;
import seamsoak.unit.UnitSystem;
import seamsoak.words.SoakWords;

/** The bands against plain Monte Carlo, and what was seen against an invented truth. */
class BandTest {
  private static final double[] CELSIUS = {1050, 1120};

  private static Billet bar(String seenAfterWeld, String seenAfterSoak) {
    return Walks.billet(
        String.format(
            """
            { "stack": { "layers": 1, "steels": ["1084"], "thickness": ["26 mm"],
                "width": "26 mm", "length": "200 mm" },
              "steps": [
                { "do": "draw", "thickness": "24 mm", "width": "24 mm",
                  "heats": [{ "at": "1150 C", "for": "4 min", "times": 2 }] },
                { "do": "grind", "depth": "0.3 mm" },
                { "do": "restack", "across": 2, "high": 1 },
                { "do": "weld", "heats": [{ "at": "1200 C", "for": "5 min" }] %s },
                { "do": "draw", "thickness": "15 mm", "width": "30 mm",
                  "heats": [{ "at": "1100 C", "for": "2 min" }] },
                { "do": "soak", "heats": [{ "at": "1050 C", "for": "20 min" }] %s } ],
              "soak": { "most": "180 min" } }
            """,
            seenAfterWeld, seenAfterSoak));
  }

  private static SoakSamples samples(Billet billet, List<Sample> histories) {
    return SoakSamples.of(
        SampleWalks.begin(billet, Walks.CORRELATIONS, histories, Progress.NONE),
        Sightings.of(billet),
        CELSIUS,
        List.of());
  }

  private static List<Sample> plain(int count, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return IntStream.range(0, count)
        .mapToObj(
            i ->
                Histories.at(
                    random.doubles(Input.values().length).map(u -> 1e-9 + u * (1 - 2e-9)).toArray(),
                    Assumptions.USUAL,
                    false))
        .toList();
  }

  /** Percentiles within a fifth, or within 2 min. */
  @Test
  void afewOrderedSamplesSayWhatManyPlainOnesSay() {
    Billet billet = bar("", "");
    SoakSamples few = samples(billet, Histories.around(Assumptions.USUAL, false, 128));
    SoakSamples many = samples(billet, plain(2000, 20261125));
    for (double celsius : CELSIUS) {
      for (double share : new double[] {0.1, 0.5, 0.9}) {
        double a = Spread.percentile(few.minutesAt(celsius), share);
        double b = Spread.percentile(many.minutesAt(celsius), share);
        assertTrue(
            Math.abs(a - b) <= Math.max(2, 0.2 * b),
            share + " at " + celsius + ": " + a + " by 128, " + b + " by 2000");
      }
    }
    assertEquals(many.goneAlreadyPct().orElseThrow(), few.goneAlreadyPct().orElseThrow(), 5);
  }

  @Test
  void moreHistoriesGiveTheSameAnswerInTheSameOrder() {
    Billet billet = bar("", "");
    SoakSamples once = samples(billet, Histories.around(Assumptions.USUAL, false, 16));
    SoakSamples again = samples(billet, Histories.around(Assumptions.USUAL, false, 16));
    for (int i = 0; i < once.count(); i++) {
      assertEquals(once.all().get(i).seconds()[0], again.all().get(i).seconds()[0], 0.0);
    }
  }

  /** A truth is invented; what it would have shown must lead back to its minutes. */
  @Test
  void anInventedTruthIsRecoveredFromWhatItWouldHaveShown() {
    Assumptions truth =
        Histories.at(
                new double[] {0.3, 0.7, 0.9, 0.2, 0.9, 0.5, 0.7, 0.5, 0.4},
                Assumptions.USUAL,
                false)
            .assumptions();
    Shop shop = new Shop(Walks.CORRELATIONS, truth, Resolution.FINE);
    List<Stage> stages = new BilletWalk(shop).walk(bar("", ""));
    LineVisibility visibility = SoakSamples.visibility(truth);
    Workpiece end = Walks.last(stages).piece();
    double minutes =
        Clearing.of(end, visibility, shop)
                .secondsAt(CELSIUS[0] + 273.15 + truth.kelvinOff())
                .orElseThrow()
            / truth.timeFactor()
            / 60;
    Billet seen =
        bar(
            ", \"seen\": " + seen(stages.get(4), visibility),
            ", \"seen\": " + seen(stages.get(6), visibility));
    SoakSamples all = samples(seen, Histories.around(Assumptions.USUAL, false, 512));
    SoakSamples kept = all.thatAgree().orElseThrow();
    assertTrue(kept.count() < 0.7 * all.count(), kept.count() + " kept");
    double middleBefore = Spread.percentile(all.minutesAt(CELSIUS[0]), 0.5);
    double[] after = kept.minutesAt(CELSIUS[0]);
    double middle = Spread.percentile(after, 0.5);
    assertTrue(
        Math.abs(middle - minutes) < Math.abs(middleBefore - minutes),
        minutes + " min is the truth, the middle goes from " + middleBefore + " to " + middle);
    assertTrue(
        Spread.percentile(after, 0.1) <= minutes && minutes <= Spread.percentile(after, 0.9),
        "the truth lies in the band");
  }

  private static String seen(Stage stage, LineVisibility visibility) {
    LineReport line = LineReport.of(stage.piece(), visibility).get(0);
    return line.visible()
        ? String.format(
            Locale.ROOT,
            "{ \"seams\": \"restack\", \"line\": \"clear\", \"width\": \"%.2f mm\" }",
            line.widthMm().orElseThrow())
        : "{ \"seams\": \"restack\", \"line\": \"none\" }";
  }

  @Test
  void anAccountThatContradictsItselfIsCalledOut() {
    Billet odd =
        bar(
            ", \"seen\": { \"seams\": \"restack\", \"line\": \"none\" }",
            ", \"seen\": { \"seams\": \"restack\", \"line\": \"clear\" }");
    SoakSamples all = samples(odd, Histories.around(Assumptions.USUAL, false, 64));
    assertFalse(all.thatAgree().isPresent(), "a line cannot come by soaking");
    Advice advice =
        new PlanAdvisor(Walks.CORRELATIONS, CautionTable.load(DataFolder.packed()), 32)
            .advise(odd, Progress.NONE);
    SoakNote said = advice.soak().advice().get(0);
    assertTrue(said instanceof SoakNote.SeenContradicts, said.toString());
    String sentence = new SoakWords(UnitSystem.BOTH).note(said);
    assertTrue(sentence.startsWith("The account contradicts itself"), sentence);
    assertTrue(sentence.contains("after step"), sentence);
  }
}
