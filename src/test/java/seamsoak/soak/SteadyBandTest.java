package seamsoak.soak;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Stage;
import seamsoak.plan.PlanAdvisor;
import seamsoak.state.Progress;
import seamsoak.support.Demos;
import seamsoak.support.Walks;

/**
 * The answer on the demo, after what was seen, from ten places in the sequence of cases: it must
 * not depend on which were drawn.
 */
@Tag("long")
class SteadyBandTest {
  private static final boolean LONG = Boolean.getBoolean("long");
  private static final int SEEDS = LONG ? 10 : 2;
  private static final int APART = 100_000;
  private static final double[] CELSIUS = {1000, 1070, 1120};

  private static SoakSamples from(int seed, Billet billet, SoakSamples.Asked asked) {
    int start = seed * APART;
    return SoakSamples.enough(
        walks(billet, start, 0), before -> walks(billet, start, before), asked);
  }

  private static SampleWalks walks(Billet billet, int start, int before) {
    int cases = PlanAdvisor.atATime(PlanAdvisor.USUAL_SAMPLES, !Sightings.of(billet).none());
    return SampleWalks.begin(
        billet,
        Walks.CORRELATIONS,
        Histories.around(Assumptions.USUAL, false, start + before, start + before + cases),
        before,
        Progress.NONE);
  }

  static Stream<Arguments> looks() {
    Stream<Arguments> all =
        Stream.of(
            Arguments.of("plain", "-", 0.1),
            Arguments.of("-", "-", 0.1),
            Arguments.of("none", "-", 0.1),
            Arguments.of("plain", "faint", 0.1),
            Arguments.of("none", "plain", 0.15));
    return LONG ? all : all.limit(1);
  }

  private static Billet seen(String rolled, String soaked) {
    String roll = "\"heats\": [{ \"at\": \"2000 F\", \"for\": \"2 min\" }] }";
    String file = Demos.text("mosaic");
    assertTrue(file.contains(roll), "the demo ends otherwise");
    String soak =
        soaked.equals("-")
            ? ""
            : ", { \"do\": \"soak\", \"heats\": [{ \"at\": \"1070 C\", \"for\": \"30 min\" }]"
                + look(soaked)
                + " }";
    return Walks.billet(
        file.replace(roll, roll.substring(0, roll.length() - 1) + look(rolled) + " }" + soak));
  }

  private static String look(String line) {
    return line.equals("-")
        ? ""
        : ", \"seen\": { \"where\": \"tile\", \"line\": \"" + line + "\" }";
  }

  /**
   * @param rolled what was seen after the last draw, or nothing
   * @param soaked the same after half an hour at 1070 C
   * @param share of the band by which the minutes of one place may differ from the median of all
   */
  @ParameterizedTest
  @MethodSource("looks")
  void minutesStay(String rolled, String soaked, double share) {
    Billet billet = seen(rolled, soaked);
    List<Stage> stages = Walks.walk(billet);
    SoakSamples.Asked asked = Possible.asked(billet, stages, CELSIUS);
    double[][] minutes =
        IntStream.range(0, SEEDS)
            .mapToObj(
                seed -> {
                  SoakSamples all = from(seed, billet, asked);
                  return new double[] {
                    all.minutes(CELSIUS[1], 0.1).orElseThrow(),
                    all.minutes(CELSIUS[1], 0.5).orElseThrow(),
                    all.minutes(CELSIUS[1], 0.9).orElseThrow(),
                    all.count(),
                    all.effective()
                  };
                })
            .toArray(double[][]::new);
    double[] high = Arrays.stream(minutes).mapToDouble(m -> m[2]).sorted().toArray();
    double median = high[high.length / 2];
    double band = median - Arrays.stream(minutes).mapToDouble(m -> m[0]).average().orElseThrow();
    double worst = Math.max(median - high[0], high[high.length - 1] - median) / band;
    String all =
        rolled + ", " + soaked + ": moves by " + worst + "; " + Arrays.deepToString(minutes);
    System.out.println(all);
    assertTrue(worst <= share, all);
  }
}
