package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import seamsoak.billet.Billet;
import seamsoak.billet.file.BilletReader;
import seamsoak.billet.file.Names;
import seamsoak.data.DataFolder;
import seamsoak.safety.CautionTable;
import seamsoak.schedule.Heater;
import seamsoak.schedule.ScheduleAdvice.Segment;
import seamsoak.state.Progress;
import seamsoak.steel.SteelTable;
import seamsoak.support.Walks;

/** Hours and stock, against sums that a smith would do on paper. */
@Timeout(120)
class OutlayTest {
  private static final DataFolder DATA = DataFolder.packed();

  private static Billet read(String text) {
    return BilletReader.read(Path.of("outlay.json"), text, Names.of(SteelTable.load(DATA), DATA));
  }

  private record Reckoned(Advice advice, Outlay outlay) {}

  private static Reckoned reckoned(Billet billet) {
    Advice advice =
        new PlanAdvisor(Walks.CORRELATIONS, CautionTable.load(DATA), 0)
            .advise(billet, Progress.NONE);
    return new Reckoned(advice, new OutlayAdvisor(Walks.CORRELATIONS).of(billet, advice));
  }

  private static String bar(String last, String blade) {
    return """
        { "units": "metric",
          "stack": { "layers": 7, "steels": ["1084", "75Ni8"], "thickness": [4, 3], "width": 30, "length": 150 },
          "steps": [
            { "do": "weld", "heats": [{ "at": 1200, "for": 5, "times": 3 }], "outside": "sealed", "faces": "sealed" },
            { "do": "draw", "thickness": 10, "width": 30,
              "heats": [{ "at": 1100, "for": 3, "times": 2, "rise": 4 }, { "at": 1050, "for": 2 }], "outside": "sealed" }%s
          ]%s }
        """
        .formatted(last, blade);
  }

  /** With the faces sealed nothing scales away: volume alone gives the length. */
  @Test
  void theStackIsReckonedBackwardFromTheBlade() {
    Outlay outlay = reckoned(read(bar("", ", \"blade\": { \"length\": 240 }"))).outlay();
    // the bar: 240 mm and an end of half the width, 15 mm, on either side
    Outlay.Wanted wanted = outlay.wanted().orElseThrow();
    assertEquals(30, wanted.endsMm(), 0.01);
    assertEquals(270, wanted.barMm(), 0.01);
    // 4 x 4 + 3 x 3 = 25 mm of stack become 10 mm of bar as wide: 270 x 10 / 25
    assertEquals(108, wanted.pieceMm().orElseThrow(), 0.5);
    assertEquals(150 * 25 / 10.0, outlay.barMm(), 0.5);
    List<Outlay.Stock> stock = outlay.stock();
    assertEquals(List.of(4, 3), stock.stream().map(Outlay.Stock::count).toList());
    assertEquals(4 * (wanted.pieceMm().get() + 2), stock.get(0).totalMm(), 1e-6);
    assertEquals(3 * (wanted.pieceMm().get() + 2), stock.get(1).totalMm(), 1e-6);
  }

  /** A restack of four takes three cuts of 2 mm from the bar, and gives a quarter of its length. */
  @Test
  void cutsOfTheStepsAreReckonedWith() {
    String restack =
        """
        , { "do": "restack", "across": 1, "high": 4 },
          { "do": "weld", "heats": [{ "at": 1200, "for": 5 }], "outside": "sealed", "faces": "sealed" },
          { "do": "draw", "thickness": 10, "width": 30, "heats": [{ "at": 1100, "for": 3 }], "outside": "sealed" }
        """;
    Outlay outlay = reckoned(read(bar(restack, ", \"blade\": { \"length\": 240 }"))).outlay();
    // 270 mm of 10 mm are 67.5 mm of 40 mm; four such and three cuts of 10 mm bar; as 25 mm stack
    assertEquals(
        (4 * 270 / 4.0 + 6) * 10 / 25, outlay.wanted().orElseThrow().pieceMm().orElseThrow(), 0.5);
  }

  @Test
  void heatsAndHoursAreThoseOfFileAndSchedule() {
    Reckoned all = reckoned(read(bar("", "")));
    assertEquals(6, all.outlay().heats());
    assertEquals(3 * (5 + 5) + 2 * (4 + 3) + (5 + 2), all.outlay().heatMinutes(), 1e-9);
    double kiln =
        all.advice().schedule().segments().stream()
            .filter(s -> s.in() == Heater.KILN && s.kind() != Segment.Kind.COOL)
            .mapToDouble(Segment::minutes)
            .sum();
    double told =
        all.outlay().spells().stream()
            .filter(s -> s.in() == Heater.KILN)
            .mapToDouble(Outlay.Spell::minutes)
            .sum();
    assertTrue(told >= kiln && kiln > 60, told + " of " + kiln);
    assertTrue(all.outlay().wanted().isEmpty());
    assertEquals(150, all.outlay().stock().get(0).lengthMm(), 1e-9);
  }

  /** What is done takes no more time and no more stock. */
  @Test
  void onlyWhatIsLeftIsCounted() {
    String text = bar("", ", \"blade\": { \"length\": 240 }");
    String begun = text.replace("\"times\": 3", "\"times\": 3, \"done\": [{}, {}]");
    Outlay outlay = reckoned(read(begun)).outlay();
    assertEquals(4, outlay.heats());
    assertEquals((5 + 5) + 2 * (4 + 3) + (5 + 2), outlay.heatMinutes(), 1e-9);
    assertTrue(outlay.stock().isEmpty());
    assertTrue(outlay.wanted().isEmpty());
  }

  /** A blade longer than any bar from such a stack is told so, not stretched. */
  @Test
  void aBladeThatIsTooLongHasNoStack() {
    Outlay outlay = reckoned(read(bar("", ", \"blade\": { \"length\": 9000 }"))).outlay();
    assertTrue(outlay.wanted().orElseThrow().pieceMm().isEmpty());
  }
}
