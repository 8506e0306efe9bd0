package seamsoak.soak;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.carbon.LineVisibility;
import seamsoak.heat.HeatCurve;
import seamsoak.soak.Histories.Sample;
import seamsoak.soak.SampleWalks.Walk;
import seamsoak.unit.Temperature;

/**
 * Clearing times over the possible histories of a billet.
 *
 * @param celsius temperatures at which they were computed, rising
 * @param all what comes of each history
 * @param leftOut how many histories could not be walked and are not among them
 */
public record SoakSamples(double[] celsius, List<Outcome> all, int leftOut) {
  /** So many samples, or this share of them, must agree with what was seen to be believed. */
  private static final int LEAST_KEPT = 8;

  private static final double LEAST_KEPT_SHARE = 0.05;

  /**
   * What comes of one history.
   *
   * @param seconds by temperature; infinite past 24 h
   * @param sample the history
   * @param goneAlready whether no line is left before the soak
   * @param goneBySchedule whether the schedule clears them without a soak
   * @param agrees by sighting, whether it would have shown what was seen
   */
  public record Outcome(
      double[] seconds,
      Sample sample,
      boolean goneAlready,
      boolean goneBySchedule,
      List<Boolean> agrees) {

    private static Outcome of(
        Walk walk, Sightings sightings, double[] celsius, List<HeatCurve> schedule) {
      Assumptions a = walk.sample().assumptions();
      LineVisibility visibility = visibility(a);
      Clearing clearing = Clearing.of(walk.end(), visibility, walk.shop());
      boolean gone = !clearing.anyShows();
      return new Outcome(
          Arrays.stream(celsius)
              .mapToObj(c -> clearing.secondsAt(c + Temperature.ZERO_CELSIUS + a.kelvinOff()))
              .mapToDouble(s -> s.orElse(Double.POSITIVE_INFINITY) / a.timeFactor())
              .toArray(),
          walk.sample(),
          gone,
          gone || clears(walk.end(), visibility, walk.shop(), schedule),
          sightings.agree(walk.stages(), visibility));
    }

    private Outcome scaled(double[] factors) {
      double[] scaled = new double[seconds.length];
      for (int k = 0; k < scaled.length; k++) {
        double withRise = (seconds[k] + Clearing.RISE_SECONDS) * factors[k];
        scaled[k] = seconds[k] == 0 ? 0 : Math.max(0, withRise - Clearing.RISE_SECONDS);
      }
      return new Outcome(scaled, sample, goneAlready, goneBySchedule, agrees);
    }

    private double fromMiddle() {
      return Arrays.stream(sample.place()).map(p -> (p - 0.5) * (p - 0.5)).sum();
    }
  }

  /**
   * What the walks leave to clear; the order of the answers does not depend on that of the work.
   */
  public static SoakSamples of(
      SampleWalks walks, Sightings sightings, double[] celsius, List<HeatCurve> schedule) {
    List<Walk> done = walks.done();
    return new SoakSamples(
        celsius,
        done.parallelStream()
            .map(
                w -> {
                  walks.progress().requireWanted();
                  return Outcome.of(w, sightings, celsius, schedule);
                })
            .toList(),
        walks.count() - done.size());
  }

  /**
   * The same with their seconds set right for the samples' grid, which tells them short.
   *
   * @param factors by temperature
   */
  public SoakSamples scaled(double[] factors) {
    return new SoakSamples(celsius, all.stream().map(o -> o.scaled(factors)).toList(), leftOut);
  }

  /** The samples that would have shown all that was seen; empty when almost none would. */
  public Optional<SoakSamples> thatAgree() {
    List<Outcome> kept = all.stream().filter(o -> !o.agrees().contains(false)).toList();
    return kept.size() < Math.max(LEAST_KEPT, LEAST_KEPT_SHARE * count())
        ? Optional.empty()
        : Optional.of(new SoakSamples(celsius, kept, leftOut));
  }

  /** In how many samples a sighting by itself agrees, percent. */
  public double agreePct(int sighting) {
    return percent(o -> o.agrees().get(sighting)).orElseThrow();
  }

  /** The sample nearest to the middle of all inputs. */
  public Assumptions nearestToMiddle() {
    return all.stream()
        .min(Comparator.comparingDouble(Outcome::fromMiddle))
        .orElseThrow()
        .sample()
        .assumptions();
  }

  public static LineVisibility visibility(Assumptions a) {
    return new LineVisibility(a.visibleDipPct(), a.broadMetres());
  }

  /** Whether heats leave no line that shows. */
  static boolean clears(
      Workpiece end, LineVisibility visibility, Shop shop, List<HeatCurve> schedule) {
    Workpiece piece = end;
    for (HeatCurve curve : schedule) {
      piece = piece.heated(curve, Edge.SEALED, Edge.SEALED, shop.solver()).piece();
    }
    return !Clearing.of(piece, visibility, shop).anyShows();
  }

  public int count() {
    return all.size();
  }

  /** In how many samples no line is left before the soak, percent; empty where there are none. */
  Optional<Double> goneAlreadyPct() {
    return percent(Outcome::goneAlready);
  }

  Optional<Double> goneBySchedulePct() {
    return percent(Outcome::goneBySchedule);
  }

  private Optional<Double> percent(Predicate<Outcome> which) {
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(100.0 * all.stream().filter(which).count() / count());
  }

  /**
   * Minutes at a temperature for every sample: log(1 + minutes) straight over 1/T between nodes.
   */
  double[] minutesAt(double atCelsius) {
    int k = 0;
    while (k < celsius.length - 2 && celsius[k + 1] < atCelsius) {
      k++;
    }
    int low = k;
    int high = Math.min(k + 1, celsius.length - 1);
    double a = 1 / (celsius[low] + Temperature.ZERO_CELSIUS);
    double b = 1 / (celsius[high] + Temperature.ZERO_CELSIUS);
    double part = low == high ? 0 : (1 / (atCelsius + Temperature.ZERO_CELSIUS) - a) / (b - a);
    return all.stream().mapToDouble(o -> between(o.seconds[low], o.seconds[high], part)).toArray();
  }

  private static double between(double lowSeconds, double highSeconds, double part) {
    double x = Math.log1p(lowSeconds / 60);
    double y = Math.log1p(highSeconds / 60);
    if (part <= 0 || part >= 1) {
      return Math.expm1(part <= 0 ? x : y);
    }
    return Double.isInfinite(x) ? x : Math.expm1(x + part * (y - x));
  }

  /** A percentile of the minutes at a temperature, empty where it lies beyond 24 h. */
  Optional<Double> minutes(double atCelsius, double share) {
    if (count() == 0) {
      return Optional.empty();
    }
    double m = Spread.percentile(minutesAt(atCelsius), share);
    return m * 60 <= Clearing.LONGEST_SECONDS ? Optional.of(Math.max(0, m)) : Optional.empty();
  }

  /** In how many samples a hold of that long clears all lines, percent. */
  Optional<Double> withinPct(double atCelsius, double minutes) {
    double[] each = minutesAt(atCelsius);
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(100.0 * Arrays.stream(each).filter(m -> m <= minutes).count() / count());
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
