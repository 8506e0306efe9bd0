package seamsoak.soak;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import seamsoak.billet.Assumptions;
import seamsoak.billet.Billet;
import seamsoak.billet.Shop;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.carbon.LineVisibility;
import seamsoak.heat.HeatCurve;
import seamsoak.property.Correlations;
import seamsoak.soak.Histories.Sample;
import seamsoak.state.Progress;
import seamsoak.unit.Temperature;

/**
 * Clearing times over the possible histories of a billet.
 *
 * @param celsius temperatures at which they were computed, rising
 * @param seconds by sample and temperature; infinite past 24 h
 * @param places by sample, where each input lay
 * @param goneAlready by sample, whether no line was left before the soak
 * @param goneBySchedule by sample, whether the schedule clears them without a soak
 * @param agrees by sample and sighting, whether the history would have shown what was seen
 * @param assumptions by sample
 * @param leftOut how many histories could not be walked and are not among them
 */
public record SoakSamples(
    double[] celsius,
    double[][] seconds,
    double[][] places,
    boolean[] goneAlready,
    boolean[] goneBySchedule,
    boolean[][] agrees,
    List<Assumptions> assumptions,
    int leftOut) {
  /** So many samples, or this share of them, must agree with what was seen to be believed. */
  private static final int LEAST_KEPT = 8;

  private static final double LEAST_KEPT_SHARE = 0.05;

  /** Walks every sample and looks what is left to clear. */
  public static SoakSamples of(
      Billet billet,
      Correlations correlations,
      List<Sample> samples,
      Sightings sightings,
      double[] celsius,
      List<HeatCurve> schedule,
      Progress progress) {
    return of(
        SampleWalks.begin(billet, correlations, samples, progress), sightings, celsius, schedule);
  }

  /**
   * What the walks leave to clear; the order of the answers does not depend on that of the work.
   */
  public static SoakSamples of(
      SampleWalks walks, Sightings sightings, double[] celsius, List<HeatCurve> schedule) {
    int[] done = walks.done();
    int count = done.length;
    double[][] seconds = new double[count][];
    boolean[] gone = new boolean[count];
    boolean[] later = new boolean[count];
    boolean[][] agrees = new boolean[count][];
    IntStream.range(0, count)
        .parallel()
        .forEach(
            i -> {
              Assumptions a = walks.samples().get(done[i]).assumptions();
              SampleWalks.Walked walked = walks.walked(done[i]);
              LineVisibility visibility = visibility(a);
              Clearing clearing = Clearing.of(walked.end(), visibility, walked.shop());
              agrees[i] = sightings.agree(walked.stages(), visibility);
              gone[i] = !clearing.anyShows();
              later[i] = gone[i] || clears(walked.end(), visibility, walked.shop(), schedule);
              seconds[i] =
                  Arrays.stream(celsius)
                      .map(
                          c -> {
                            OptionalDouble s =
                                clearing.secondsAt(c + Temperature.ZERO_CELSIUS + a.kelvinOff());
                            return s.orElse(Double.POSITIVE_INFINITY) / a.timeFactor();
                          })
                      .toArray();
            });
    List<Sample> samples = Arrays.stream(done).mapToObj(walks.samples()::get).toList();
    return new SoakSamples(
        celsius,
        seconds,
        samples.stream().map(Sample::place).toArray(double[][]::new),
        gone,
        later,
        agrees,
        samples.stream().map(Sample::assumptions).toList(),
        walks.samples().size() - count);
  }

  /**
   * The same with their seconds set right for the samples' grid, which tells them short.
   *
   * @param factors by temperature
   */
  public SoakSamples scaled(double[] factors) {
    double[][] scaled = new double[seconds.length][celsius.length];
    for (int i = 0; i < scaled.length; i++) {
      for (int k = 0; k < celsius.length; k++) {
        double withRise = (seconds[i][k] + Clearing.RISE_SECONDS) * factors[k];
        scaled[i][k] = seconds[i][k] == 0 ? 0 : Math.max(0, withRise - Clearing.RISE_SECONDS);
      }
    }
    return new SoakSamples(
        celsius, scaled, places, goneAlready, goneBySchedule, agrees, assumptions, leftOut);
  }

  /** The samples that would have shown all that was seen; empty when almost none would. */
  public Optional<SoakSamples> thatAgree() {
    int[] kept = IntStream.range(0, count()).filter(this::allAgree).toArray();
    if (kept.length < Math.max(LEAST_KEPT, LEAST_KEPT_SHARE * count())) {
      return Optional.empty();
    }
    return Optional.of(
        new SoakSamples(
            celsius,
            Arrays.stream(kept).mapToObj(i -> seconds[i]).toArray(double[][]::new),
            Arrays.stream(kept).mapToObj(i -> places[i]).toArray(double[][]::new),
            only(kept, goneAlready),
            only(kept, goneBySchedule),
            Arrays.stream(kept).mapToObj(i -> agrees[i]).toArray(boolean[][]::new),
            Arrays.stream(kept).mapToObj(assumptions::get).toList(),
            leftOut));
  }

  private boolean allAgree(int sample) {
    for (boolean a : agrees[sample]) {
      if (!a) {
        return false;
      }
    }
    return true;
  }

  private static boolean[] only(int[] kept, boolean[] all) {
    boolean[] some = new boolean[kept.length];
    for (int i = 0; i < kept.length; i++) {
      some[i] = all[kept[i]];
    }
    return some;
  }

  /** In how many samples a sighting by itself agrees, percent. */
  public double agreePct(int sighting) {
    int yes = 0;
    for (boolean[] a : agrees) {
      yes += a[sighting] ? 1 : 0;
    }
    return 100.0 * yes / agrees.length;
  }

  /** The sample nearest to the middle of all inputs. */
  public Assumptions nearestToMiddle() {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.length; i++) {
      double sum = 0;
      for (double p : places[i]) {
        sum += (p - 0.5) * (p - 0.5);
      }
      if (sum < least) {
        least = sum;
        best = i;
      }
    }
    return assumptions.get(best);
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
    return seconds.length;
  }

  /** In how many samples no line is left before the soak, percent; empty where there are none. */
  Optional<Double> goneAlreadyPct() {
    return percent(goneAlready);
  }

  Optional<Double> goneBySchedulePct() {
    return percent(goneBySchedule);
  }

  private static Optional<Double> percent(boolean[] which) {
    int yes = 0;
    for (boolean b : which) {
      yes += b ? 1 : 0;
    }
    return which.length == 0 ? Optional.empty() : Optional.of(100.0 * yes / which.length);
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
    double[] minutes = new double[seconds.length];
    for (int i = 0; i < minutes.length; i++) {
      double x = Math.log1p(seconds[i][low] / 60);
      double y = Math.log1p(seconds[i][high] / 60);
      minutes[i] =
          part <= 0
              ? Math.expm1(x)
              : part >= 1
                  ? Math.expm1(y)
                  : Double.isInfinite(x) ? x : Math.expm1(x + part * (y - x));
    }
    return minutes;
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
    double[] all = minutesAt(atCelsius);
    return all.length == 0
        ? Optional.empty()
        : Optional.of(100.0 * Arrays.stream(all).filter(m -> m <= minutes).count() / all.length);
  }

  /** The input that sways the minutes at a temperature most, if any does. */
  Optional<Input> dominant(double atCelsius) {
    int d = count() == 0 ? -1 : Spread.dominant(places, minutesAt(atCelsius));
    return d < 0 ? Optional.empty() : Optional.of(Input.values()[d]);
  }
}
