package seamsoak.soak;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Seen.Etched;
import seamsoak.billet.Stage;
import seamsoak.property.etch.Etching;
import seamsoak.soak.SampleWalks.Walk;
import seamsoak.state.AsCooled;
import seamsoak.state.Etch;
import seamsoak.state.SeamKeys;
import seamsoak.state.Verdict;

/**
 * What shows, and for how long, over the possible histories of a billet, each weighed by how likely
 * it would have shown what was seen.
 *
 * @param celsius temperatures at which they were computed, rising
 * @param all what comes of each history
 * @param leftOut how many histories could not be walked and are not among them
 * @param eyes that may look
 * @param looks what was seen
 */
public record SoakSamples(
    double[] celsius, List<Outcome> all, int leftOut, Eyes eyes, List<Looking> looks) {
  /**
   * So many for each look have to count once weighed by what was seen, or more are tried, at most
   * so many times as many; judgement. Looks that contradict each other leave the least steady
   * minutes.
   */
  private static final double ENOUGH_COUNT = 70;

  private static final int MOST_TIMES = 3;

  static final int BLADE = Etched.HARDENED.ordinal();

  /** What is looked for in each history. */
  public record Asked(
      Sightings sightings,
      List<Stage> usual,
      AsCooled asCooled,
      ToCome toCome,
      Worth worth,
      Etching etching,
      double[] celsius) {}

  /**
   * As many as are asked for, and while what was seen leaves too few of them that count, as many
   * more.
   *
   * @param more walks from a place in the sequence on
   */
  public static SoakSamples enough(SampleWalks first, IntFunction<SampleWalks> more, Asked asked) {
    SoakSamples all = of(first, asked);
    while (!all.looks.isEmpty()
        && all.count() > 0
        && all.effective() < ENOUGH_COUNT * all.looks.size()
        && all.tried() < MOST_TIMES * first.count()) {
      all = all.and(of(more.apply(all.tried()), asked));
    }
    return all;
  }

  /**
   * What the walks leave to clear; the order of the answers does not depend on that of the work.
   */
  public static SoakSamples of(SampleWalks walks, Asked asked) {
    List<Walk> done = walks.done();
    Eyes eyes = new Eyes(asked.etching().looks());
    List<Looking> looks = asked.sightings().looks(asked.usual(), asked.asCooled(), asked.toCome());
    return new SoakSamples(
        asked.celsius(),
        done.parallelStream()
            .map(
                w -> {
                  walks.progress().requireWanted();
                  return outcome(w, asked, looks, eyes);
                })
            .toList(),
        walks.count() - done.size(),
        eyes,
        looks);
  }

  private static Outcome outcome(Walk walk, Asked asked, List<Looking> looks, Eyes eyes) {
    Assumptions a = walk.sample().assumptions();
    List<Etch> etches = asked.toCome().each().stream().map(e -> e.at(a.ferritePlace())).toList();
    Clearing clearing = Clearing.of(walk.end(), etches.get(BLADE), walk.shop());
    Clearing.Hold[] holds = clearing.holds(asked.celsius());
    Faded faded = Faded.of(clearing, holds, asked.celsius(), asked.worth());
    int cool = Faded.coolest(asked.celsius());
    States states = new States(clearing, holds[cool], faded.cycles()[cool], etches);
    Belief belief =
        Belief.of(
            looks.stream()
                .map(l -> l.against(walk.stages(), a.ferritePlace(), a.broadMetres()))
                .toList(),
            eyes);
    return new Outcome(
        walk.sample(),
        faded,
        clearing.brightest(clearing.finished()),
        states.brightest(),
        states.contrasts(new SeamKeys(clearing.places())),
        belief,
        Arrays.stream(Fade.LEVELS).map(level -> belief.unseen(BLADE, level, eyes)).toArray());
  }

  /**
   * The same with their seconds set right for the samples' grid, which tells them short.
   *
   * @param factors by temperature
   */
  public SoakSamples scaled(double[] factors) {
    return new SoakSamples(
        celsius, all.stream().map(o -> o.scaled(factors)).toList(), leftOut, eyes, looks);
  }

  /** Together with more of the same billet. */
  private SoakSamples and(SoakSamples more) {
    return new SoakSamples(
        celsius,
        Stream.concat(all.stream(), more.all.stream()).toList(),
        leftOut + more.leftOut,
        eyes,
        looks);
  }

  public int count() {
    return all.size();
  }

  /** Whether they are weighed by what an etch showed. */
  boolean seen() {
    return !looks.isEmpty();
  }

  /** With those that could not be walked. */
  int tried() {
    return count() + leftOut;
  }

  double weight() {
    return all.stream().mapToDouble(o -> o.belief().likelihood()).sum();
  }

  /** How many histories alike would say as much: all of them where nothing was seen. */
  public double effective() {
    double squares =
        all.stream().mapToDouble(o -> o.belief().likelihood() * o.belief().likelihood()).sum();
    return squares > 0 ? weight() * weight() / squares : 0;
  }

  /** How likely a line that was seen is not of missing carbon, percent. */
  public Optional<Double> notCarbonPct() {
    double prior = eyes.looks().notCarbon();
    double other = prior * all.stream().mapToDouble(o -> o.belief().notCarbon()).sum();
    double sum = other + (1 - prior) * weight();
    return sum > 0 ? Optional.of(100 * other / sum) : Optional.empty();
  }

  /** What a look still to come would say. */
  LooksToCome looksToCome() {
    return new LooksToCome(this);
  }

  /** What the looks come to, and which would tell most; empty where there are no samples. */
  Optional<SoakAdvice.Evidence> evidence() {
    return weight() > 0
        ? Optional.of(
            new SoakAdvice.Evidence(
                effective(),
                looks.isEmpty() ? Optional.empty() : notCarbonPct(),
                looksToCome().most()))
        : Optional.empty();
  }

  /** Chance that an eye sees no line of that contrast in a state, percent. */
  private Optional<Double> unseenPct(int state, ToDoubleFunction<Outcome> contrast) {
    double weight = weight();
    return weight > 0
        ? Optional.of(
            Math.min(
                100,
                100
                    * all.stream()
                        .mapToDouble(o -> o.belief().unseen(state, contrast.applyAsDouble(o), eyes))
                        .sum()
                    / weight))
        : Optional.empty();
  }

  /** In how many such billets the blade shows no line without a soak, and without cycles. */
  Optional<Double> goneAlreadyPct() {
    return unseenPct(BLADE, Outcome::brightestNow);
  }

  /** In how many the cycles to come clear them by themselves. */
  Optional<Double> goneBySchedulePct() {
    return unseenPct(BLADE, o -> o.brightest()[BLADE]);
  }

  /** Whether a line shows in a state, with its band. */
  Verdict verdict(String key, int state, double likely) {
    double weight = weight();
    if (!(weight > 0)) {
      return Verdict.of(likely);
    }
    double[] contrast = all.stream().mapToDouble(o -> contrast(o, key, state)).toArray();
    double[] weights = all.stream().mapToDouble(o -> o.belief().likelihood()).toArray();
    return Verdict.of(
        likely,
        Spread.percentile(contrast, weights, 0.1),
        Spread.percentile(contrast, weights, 0.9),
        100 - unseenPct(state, o -> contrast(o, key, state)).orElseThrow());
  }

  private static double contrast(Outcome o, String key, int state) {
    double[] each = o.contrasts().get(key);
    return each == null ? 0 : each[state];
  }

  /** Every history at one heat. */
  private List<Faded.AtHeat> at(double atCelsius) {
    return all.stream().map(o -> o.faded().at(atCelsius)).toList();
  }

  /** Minutes at a heat until the contrast is 1, by history. */
  double[] minutesAt(double atCelsius) {
    return at(atCelsius).stream().mapToDouble(h -> h.secondsToClear() / 60).toArray();
  }

  /** The least minutes at a heat that do in such a share of billets; empty beyond 24 h. */
  Optional<Double> minutes(double atCelsius, double share) {
    return new Chances(this, at(atCelsius)).minutes(share);
  }

  /** Low, half and high. */
  List<Optional<Double>> minutes(double atCelsius) {
    Chances chances = new Chances(this, at(atCelsius));
    return List.of(chances.minutes(0.1), chances.minutes(0.5), chances.minutes(0.9));
  }

  /** In how many billets a hold of that long clears all lines, percent. */
  Optional<Double> withinPct(double atCelsius, double minutes) {
    return weight() > 0
        ? Optional.of(100 * new Chances(this, at(atCelsius)).after(minutes))
        : Optional.empty();
  }

  /** The input that sways the minutes at a temperature most, if any does. */
  Optional<Input> dominant(double atCelsius) {
    int d = count() == 0 ? -1 : Spread.dominant(places(), minutesAt(atCelsius));
    return d < 0 ? Optional.empty() : Optional.of(Input.values()[d]);
  }

  private double[][] places() {
    return all.stream().map(o -> o.sample().place()).toArray(double[][]::new);
  }
}
