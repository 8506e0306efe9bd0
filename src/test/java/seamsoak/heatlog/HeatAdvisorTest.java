package seamsoak.heatlog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import seamsoak.billet.Exposure;
import seamsoak.billet.LoggedCurve.Tip;

/** What a heat was worth, and how sure that is. */
class HeatAdvisorTest {
  private final Heats heats = new Heats();

  private RealHeat steel(LogReading.Read log, double plannedC) {
    return heats.of(log, heats.query(Tip.STEEL, plannedC));
  }

  @Test
  void aHoldAtThePlanIsWorthItsMinutes() {
    RealHeat heat = steel(Heats.log(30, 10, m -> 1121), 1121);
    assertEquals(30, heat.credit().minutes(), 1e-9);
    assertEquals(30, heat.hotMinutes(), 1e-9);
    assertEquals(1121, heat.peakC(), 1e-9);
  }

  /**
   * Square bars put cold into a kiln: computed independently, each half an hour after loading.
   * Within three points.
   */
  @ParameterizedTest
  @CsvSource({"1121, 12, 91", "1121, 25, 80", "1121, 38, 69", "900, 25, 64", "900, 38, 45"})
  void aPieceLagsBehindTheAir(double celsius, double millimetres, double percent) {
    RealHeat heat =
        heats.of(Heats.log(40, 10, m -> celsius), heats.inAir(celsius, millimetres, 10));
    assertEquals(percent, 100 * heat.credit().minutes() / 30, 3);
    assertTrue(heat.credit().low() < heat.credit().minutes() - 0.5);
    assertTrue(heat.credit().high() > heat.credit().minutes() + 0.5);
    assertEquals(10, heat.piece().get(0).minute(), 1e-9);
  }

  /** A standard couple of type K is 8.4 K off at 1121 C: 7 % of the credit, and drift one way. */
  @Test
  void theBandIsTheCouples() {
    LogReading.Read log = Heats.log(60, 10, m -> 1121);
    HeatQuery asked = heats.query(Tip.STEEL, 1121);
    RealHeat fresh = heats.of(log, heats.with(asked, "K standard, new"));
    assertEquals(8.41, fresh.couple().wire().toleranceKelvin(1121), 0.01);
    assertEquals(60 * 1.07, fresh.credit().high(), 0.6);
    assertEquals(60 / 1.07, fresh.credit().low(), 0.6);
    RealHeat used = heats.of(log, heats.with(asked, "K standard, used"));
    assertEquals(fresh.credit().high(), used.credit().high(), 1e-9);
    assertTrue(used.credit().low() < fresh.credit().low() - 0.5);
    RealHeat surface =
        heats.of(log, heats.with(heats.query(Tip.SURFACE, 1121), "K standard, used"));
    assertTrue(surface.credit().low() < used.credit().low() - 0.5);
  }

  @ParameterizedTest
  @CsvSource({
    "K class 1, 1000, 4", "K class 2, 1200, 9", "K standard, 1121, 8.4075", "K special, 100, 1.1",
    "S class 1, 1100, 1", "S class 1, 1300, 1.6", "R class 2, 1000, 2.5", "J class 2, 750, 5.625",
    "N class 2, 100, 2.5"
  })
  void tolerancesAreAsSellersQuoteThem(String couple, double celsius, double kelvin) {
    assertEquals(
        kelvin, heats.settings().find(couple).orElseThrow().wire().toleranceKelvin(celsius), 1e-9);
  }

  @Test
  void anUnknownClassIsTheWidest() {
    assertEquals("K class 2, used", heats.settings().find("k").orElseThrow().written());
    assertEquals("S class 2, new", heats.settings().find("type S, new").orElseThrow().written());
    assertTrue(heats.settings().find("Q").isEmpty());
    assertTrue(heats.settings().find("K golden").isEmpty());
    assertTrue(heats.settings().find("K, old").isEmpty());
  }

  /**
   * Carbon counts the cooler end, the band reaches from nothing to the hotter, scale the hotter.
   */
  @Test
  void aGapCountsLittleForCarbonAndMuchForScale() {
    StringBuilder text = new StringBuilder("Time [s],T [°C]\n");
    for (int s = 0; s <= 3600; s += 10) {
      if (s <= 1200 || s >= 2400) {
        text.append(s).append(',').append(s <= 1200 ? 1150 : 1000).append('\n');
      }
    }
    RealHeat heat = steel(Heats.read(text.toString()), 1000);
    assertEquals(1, heat.curve().gaps().size());
    assertEquals(20, heat.credit().gapMinutes(), 1e-6);
    double hot = heats.rate().at(1150) / heats.rate().at(1000);
    assertEquals(20 * hot + 20 + 20, heat.credit().minutes(), 0.01);
    Credit.Doubt gaps = doubt(heat, Credit.Source.GAPS);
    assertEquals(20 * hot + 20, gaps.low(), 0.01);
    assertEquals(20 * hot + 20 * hot + 20, gaps.high(), 0.01);
    RealHeat known = steel(Heats.log(60, 10, m -> m < 40 ? 1150 : 1000), 1000);
    assertEquals(
        known.face().orElseThrow().metalLossMm(), heat.face().orElseThrow().metalLossMm(), 1e-3);
    assertEquals(known.grainAstm().orElseThrow(), heat.grainAstm().orElseThrow(), 0.05);
  }

  private static Credit.Doubt doubt(RealHeat heat, Credit.Source source) {
    return heat.credit().doubts().stream()
        .filter(d -> d.source() == source)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void nothingCountsBeforeThePieceWasInNorAfterItCameOut() {
    LogReading.Read log = Heats.log(60, 10, m -> 1100);
    RealHeat heat = heats.of(log, heats.between(heats.query(Tip.STEEL, 1100), 10.05, 40.1));
    assertEquals(30.05, heat.credit().minutes(), 1e-9);
  }

  @Test
  void nothingCountsBelowAustenite() {
    RealHeat heat = steel(Heats.log(60, 10, m -> 700), 1100);
    assertEquals(0, heat.credit().minutes());
    assertEquals(0, heat.hotMinutes());
    assertTrue(heat.grainAstm().isEmpty());
    assertTrue(heat.remarks().stream().anyMatch(r -> r instanceof LogRemark.NeverHot));
  }

  /** A couple that is open reads the end of its range. */
  @Test
  void readingsBeyondTheCouplesRangeCountForNothing() {
    RealHeat heat = steel(Heats.log(30, 10, m -> m > 10 && m < 15 ? 1372 : 1100), 1100);
    assertEquals(30, heat.credit().minutes(), 1e-6);
    assertEquals(1, heat.curve().gaps().size());
    assertEquals(1100, heat.peakC(), 1e-6);
  }

  /** Twice as long at one heat is twice the square of the scale; grains grow as the law has it. */
  @Test
  void scaleAndGrainComeFromTheRealCurve() {
    RealHeat one = steel(Heats.log(20, 10, m -> 1100), 1100);
    RealHeat two = steel(Heats.log(40, 10, m -> 1100), 1100);
    double ratio = two.face().orElseThrow().metalLossMm() / one.face().orElseThrow().metalLossMm();
    assertEquals(Math.sqrt(2), ratio, 0.01);
    assertTrue(two.grainAstm().orElseThrow() < one.grainAstm().orElseThrow());
    RealHeat cooler = steel(Heats.log(20, 10, m -> 1000), 1100);
    assertTrue(cooler.face().orElseThrow().metalLossMm() < one.face().orElseThrow().metalLossMm());
  }

  @Test
  void aFewRowsAnHourSaySo() {
    RealHeat heat = steel(Heats.log(120, 300, m -> 1100), 1100);
    assertEquals(120, heat.credit().minutes(), 1e-6);
    assertTrue(heat.curve().gaps().isEmpty());
    assertTrue(heat.remarks().stream().anyMatch(r -> r instanceof LogRemark.FewRows));
  }

  @Test
  void withoutAPlanItsOwnHoldIsThePlan() {
    HeatQuery q = heats.query(Tip.STEEL, 0);
    HeatQuery asked =
        new HeatQuery(
            q.steel(),
            true,
            Optional.empty(),
            q.tip(),
            q.couple(),
            q.section(),
            q.loadedMinute(),
            q.removedMinute(),
            q.face());
    RealHeat heat = heats.of(Heats.log(30, 10, m -> Math.min(1103, 700 + 50 * m)), asked);
    assertEquals(1105, heat.plannedC());
    assertTrue(heat.held());
    assertTrue(heat.taken().contains(RealHeat.Taken.PLANNED));
  }

  @Test
  void whatIsNotKnownIsAsked() {
    HeatQuery nothing =
        new HeatQuery(
            heats.query(Tip.STEEL, 1100).steel(),
            true,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Exposure.OPEN));
    assertEquals(List.of(new LogQuestion.WhereTip()), HeatAdvisor.open(nothing));
    assertEquals(
        List.of(new LogQuestion.WhenLoaded(), new LogQuestion.HowThick()),
        HeatAdvisor.open(heats.query(Tip.AIR, 1100)));
    assertEquals(List.of(), HeatAdvisor.open(heats.query(Tip.STEEL, 1100)));
    assertEquals(List.of(), HeatAdvisor.open(heats.inAir(1100, 25, 0)));
  }
}
