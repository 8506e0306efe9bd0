package seamsoak.soak;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import seamsoak.soak.Histories.Sample;
import seamsoak.state.Etch;
import seamsoak.state.LineReport;
import seamsoak.support.Seams;
import seamsoak.support.Walks;

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
                { "do": "soak", "heats": [{ "at": "1050 C", "for": "2 min" }] %s } ],
              "soak": { "most": "180 min" } }
            """,
            seenAfterWeld, seenAfterSoak));
  }

  private static SoakSamples samples(Billet billet, List<Sample> histories) {
    return Possible.of(billet, histories, CELSIUS);
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

  /** Minutes that do in one, five, nine of ten within a fifth, or within 2 min. */
  @Test
  void afewOrderedSamplesSayWhatManyPlainOnesSay() {
    Billet billet = bar("", "");
    SoakSamples few = samples(billet, Histories.around(Assumptions.USUAL, false, 0, 128));
    SoakSamples many = samples(billet, plain(2000, 20261125));
    for (double celsius : CELSIUS) {
      for (double share : new double[] {0.1, 0.5, 0.9}) {
        double a = few.minutes(celsius, share).orElseThrow();
        double b = many.minutes(celsius, share).orElseThrow();
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
    SoakSamples once = samples(billet, Histories.around(Assumptions.USUAL, false, 0, 16));
    SoakSamples again = samples(billet, Histories.around(Assumptions.USUAL, false, 0, 16));
    for (int i = 0; i < once.count(); i++) {
      assertEquals(once.minutesAt(CELSIUS[0])[i], again.minutesAt(CELSIUS[0])[i], 0.0);
    }
  }

  /** A truth is invented; what it would have shown must lead back to its minutes. */
  @Test
  void anInventedTruthIsRecoveredFromWhatItWouldHaveShown() {
    Assumptions truth =
        Histories.at(
                new double[] {0.3, 0.7, 0.9, 0.2, 0.9, 0.5, 0.3, 0.5, 0.8},
                Assumptions.USUAL,
                false)
            .assumptions();
    Shop shop = new Shop(Walks.CORRELATIONS, truth, Resolution.FINE);
    Billet bar = bar("", "");
    List<Stage> stages = new BilletWalk(shop).walk(bar);
    ToCome toCome = Possible.toCome(bar, Walks.walk(bar));
    Workpiece end = Walks.last(stages).piece();
    double minutes =
        Clearing.of(end, toCome.finished().at(truth.ferritePlace()), shop)
                .secondsAt(CELSIUS[0], Possible.worth(bar, Walks.walk(bar)))
            / 60;
    Billet seen =
        bar(
            ", \"seen\": " + seen(bar, stages.get(4), truth),
            ", \"seen\": " + seen(bar, stages.get(6), truth));
    SoakSamples all = samples(seen, Histories.around(Assumptions.USUAL, false, 0, 512));
    // looks weigh softly: a tenth and more of the cases no longer count
    assertTrue(all.effective() < 0.9 * all.count(), all.effective() + " count");
    SoakSamples before = samples(bar, Histories.around(Assumptions.USUAL, false, 0, 512));
    double middleBefore = before.minutes(CELSIUS[0], 0.5).orElseThrow();
    double middle = all.minutes(CELSIUS[0], 0.5).orElseThrow();
    assertTrue(
        Math.abs(middle - minutes) < Math.abs(middleBefore - minutes),
        minutes + " min is the truth, the middle goes from " + middleBefore + " to " + middle);
    assertTrue(
        all.minutes(CELSIUS[0], 0.1).orElseThrow() <= minutes
            && minutes <= all.minutes(CELSIUS[0], 0.9).orElseThrow(),
        "the truth lies in the band");
  }

  private static String seen(Billet billet, Stage stage, Assumptions truth) {
    Etch etch = Seams.asCooled(billet).after(stage).at(truth.ferritePlace());
    LineReport line = LineReport.of(stage.piece(), etch).get(0);
    return line.visible()
        ? String.format(
            Locale.ROOT,
            "{ \"seams\": \"restack\", \"line\": \"clear\", \"width\": \"%.2f mm\" }",
            line.widthMm().orElseThrow())
        : "{ \"seams\": \"restack\", \"line\": \"none\" }";
  }

  /** A line cannot come by soaking; nothing is thrown away all the same. */
  @Test
  void anAccountThatContradictsItselfLeavesAnAnswer() {
    Billet odd =
        bar(
            ", \"seen\": { \"seams\": \"restack\", \"line\": \"none\" }",
            ", \"seen\": { \"seams\": \"restack\", \"line\": \"plain\" }");
    SoakSamples all = samples(odd, Histories.around(Assumptions.USUAL, false, 0, 64));
    assertEquals(64, all.count());
    assertTrue(all.minutes(CELSIUS[0], 0.9).isPresent());
    assertTrue(all.effective() > 1, all.effective() + " count");
  }
}
