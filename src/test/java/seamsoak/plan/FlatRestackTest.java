package seamsoak.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import seamsoak.billet.Billet;
import seamsoak.billet.file.BilletReader;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.state.LineReport;
import seamsoak.support.Answer;
import seamsoak.support.FlatRestack;
import seamsoak.support.FlatRestacks;
import seamsoak.support.Walks;

/**
 * The most usual billets, flat-restacked bars of 60 to 800 layers, are answered, every one, and
 * however many histories the bands rest on: that changes how sure an answer is, not whether there
 * is one. An ordinary build takes ten of them, {@code -Plong} all.
 */
@Tag("long")
@Tag("slow")
class FlatRestackTest {
  /** What the command line takes unless told otherwise. */
  private static final int USUAL_SAMPLES = 128;

  /** As many as leave an ordinary build quick. */
  private static final int FEW_SAMPLES = 16;

  private static final List<FlatRestack> ALL = FlatRestacks.all();

  /** Two as the command line takes them; the others written out and some of the drawn with few. */
  static Stream<Arguments> some() {
    List<FlatRestack> named = FlatRestacks.named();
    Stream<FlatRestack> others =
        Stream.concat(
            named.stream().skip(2),
            IntStream.range(0, 5).mapToObj(i -> ALL.get(named.size() + 13 * i)));
    return Stream.concat(
        named.stream().limit(2).map(one -> Arguments.of(one, USUAL_SAMPLES)),
        others.map(one -> Arguments.of(one, FEW_SAMPLES)));
  }

  @ParameterizedTest
  @MethodSource("some")
  void isAnswered(FlatRestack one, int samples) {
    Answer answer = Answer.to(one.billet(), samples);
    assertTrue(answer.good(), () -> one + ": " + String.join("\n", answer.wrong()));
  }

  /** Where lines show, a soak is asked for and it is shorter the hotter it is. */
  @Test
  void aBarWeldedInHasteTakesASoak() {
    Answer answer = Answer.to(FlatRestacks.inHaste().billet(), FEW_SAMPLES);
    List<SoakOption> options = answer.advice().orElseThrow().soak().options();
    double hottest = options.get(options.size() - 1).minutes().orElseThrow();
    double mild = options.get(options.size() / 2).minutes().orElseThrow();
    double coolest = options.get(0).minutes().orElse(Double.POSITIVE_INFINITY);
    assertTrue(
        mild > 0 && hottest < mild && mild < coolest,
        hottest + " min at the hottest, " + mild + " below, " + coolest + " at the coolest");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 4, 64, 128, 512})
  @EnabledIfSystemProperty(named = "long", matches = "true")
  void allAreAnsweredWhateverTheNumberOfHistories(int samples) {
    Map<FlatRestack, Answer> answers = new LinkedHashMap<>();
    ALL.forEach(one -> answers.put(one, Answer.to(one.billet(), samples)));
    System.out.println(summary(answers, samples));
    List<String> wrong = new ArrayList<>();
    answers.forEach(
        (one, a) -> a.wrong().forEach(w -> wrong.add(one + ", " + one.layers() + " layers: " + w)));
    assertTrue(wrong.isEmpty(), () -> String.join("\n", wrong));
  }

  private static String summary(Map<FlatRestack, Answer> answers, int samples) {
    Map.Entry<FlatRestack, Answer> slowest =
        answers.entrySet().stream()
            .max(Comparator.comparingDouble(e -> e.getValue().seconds()))
            .orElseThrow();
    return String.format(
        Locale.ROOT,
        "Flat restacks, %d histories: %d of %d answered, %d of them without fault; %d histories left"
            + " out; slowest %.1f s (%s)",
        samples,
        answers.values().stream().filter(a -> a.advice().isPresent()).count(),
        answers.size(),
        answers.values().stream().filter(Answer::good).count(),
        answers.values().stream().mapToInt(a -> a.leftOut(samples)).sum(),
        slowest.getValue().seconds(),
        slowest.getKey());
  }

  /** The histories say how sure it is; what lies in the middle they do not move. */
  @Test
  void theDemosMiddleEstimateIsTheSameForAnyNumberOfHistories() {
    sameMiddle(BilletReader.read(Path.of("alloy-data/billets/mosaic.json"), Walks.NAMES));
  }

  @Test
  void soIsThatOfABarOfManyLayers() {
    sameMiddle(FlatRestacks.of1084(25, 4, 2).billet());
  }

  @Test
  @EnabledIfSystemProperty(named = "long", matches = "true")
  void theMiddleEstimateIsTheSameForAllOfThem() {
    ALL.forEach(one -> sameMiddle(one.billet()));
  }

  private static void sameMiddle(Billet billet) {
    Answer without = Answer.to(billet, 0);
    for (int samples : new int[] {4, 64}) {
      Answer with = Answer.to(billet, samples);
      assertTrue(
          with.advice().isPresent(), () -> billet.name() + ", " + samples + ": " + with.wrong());
      assertEquals(
          middle(without.advice().orElseThrow()),
          middle(with.advice().orElseThrow()),
          () -> billet.name() + ", " + samples + " histories");
    }
  }

  /**
   * All that is told of the lines and of each temperature but the bands; minutes of a line are of
   * the recommended temperature, which the bands decide.
   */
  private static List<Object> middle(Advice advice) {
    List<Object> all = new ArrayList<>(advice.history());
    for (LineReport l : advice.soak().lines()) {
      all.add(List.of(l.joints(), l.sharePct(), l.steel(), l.seamPct(), l.farPct(), l.dipPct()));
      all.add(List.of(l.widthMm(), l.trueWidthMm(), l.narrowestMm(), l.contrast(), l.visible()));
    }
    advice.soak().options().forEach(o -> all.add(withoutBand(o)));
    return all;
  }

  private static SoakOption withoutBand(SoakOption o) {
    return new SoakOption(
        o.temperatureC(),
        o.minutes(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        o.clears(),
        o.metalLossMm(),
        o.skinMm(),
        o.sideSkinMm(),
        o.softMm(),
        o.sideSoftMm(),
        o.grainAstm(),
        Optional.empty(),
        o.remarks());
  }
}
