package seamsoak.soak;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import seamsoak.billet.Billet;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.LineVisibility;
import seamsoak.heat.HeatCurve;
import seamsoak.soak.SoakAdvice.OptionRemark;
import seamsoak.soak.SoakAdvice.Recommended;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.state.Limits;
import seamsoak.unit.Temperature;

/** Finds the soak that clears the lines of a billet, what each would cost and how sure that is. */
public final class SoakAdvisor {
  private static final double STEP = 10;
  private static final double NODE_STEP = 60;

  private final Billet billet;
  private final Shop shop;
  private final Workpiece end;
  private final LineVisibility visibility;
  private final List<HeatCurve> cycles;
  private final ToDoubleFunction<HeatCurve> grain;
  private final Limits limits;
  private final Clearing clearing;

  /**
   * @param cycles the normalizing and refining to come if there is no soak
   * @param grain its number after a curve, the grains forming anew
   */
  public SoakAdvisor(
      Billet billet,
      Shop shop,
      Stage end,
      LineVisibility visibility,
      List<HeatCurve> cycles,
      ToDoubleFunction<HeatCurve> grain) {
    this.billet = billet;
    this.shop = shop;
    this.end = end.piece();
    this.visibility = visibility;
    this.cycles = cycles;
    this.grain = grain;
    this.limits = Limits.of(billet, this.end, shop);
    this.clearing = Clearing.of(this.end, visibility, shop);
  }

  /** Temperatures from the lowest at which the body is austenite to the refusal limit, degC. */
  double[] temperatures() {
    double highest = Math.floor(limits.refusalCelsius() / STEP) * STEP;
    double lowest = Math.min(highest, Math.ceil(limits.fullAusteniteCelsius() / STEP) * STEP);
    int count = (int) Math.round((highest - lowest) / STEP) + 1;
    return IntStream.range(0, count).mapToDouble(i -> lowest + i * STEP).toArray();
  }

  /** A few temperatures over the same range, between which samples are interpolated. */
  public double[] nodes() {
    double[] all = temperatures();
    double lowest = all[0];
    double highest = all[all.length - 1];
    int parts = (int) Math.max(1, Math.ceil((highest - lowest) / NODE_STEP));
    return lowest == highest
        ? new double[] {lowest}
        : IntStream.rangeClosed(0, parts)
            .mapToDouble(i -> lowest + (highest - lowest) * i / parts)
            .toArray();
  }

  /**
   * By node, how much longer this history takes on the answer's grid than on that of the samples,
   * the rise counted; 1 where either has nothing to clear or never does.
   */
  public double[] overSamples() {
    Shop coarse = new Shop(shop.correlations(), shop.assumptions(), Resolution.SAMPLE);
    Clearing sample = Clearing.after(billet, coarse, visibility);
    return Arrays.stream(nodes())
        .parallel()
        .map(
            celsius -> {
              double fine = clearing.secondsAt(celsius + Temperature.ZERO_CELSIUS).orElse(0);
              double coarser = sample.secondsAt(celsius + Temperature.ZERO_CELSIUS).orElse(0);
              return fine > 0 && coarser > 0
                  ? (fine + Clearing.RISE_SECONDS) / (coarser + Clearing.RISE_SECONDS)
                  : 1;
            })
        .toArray();
  }

  /**
   * The advice.
   *
   * @param possible the histories that the bands rest on
   * @param seen what comes of what the smith saw
   */
  public SoakAdvice advise(SoakSamples possible, Optional<SoakNote> seen) {
    List<SoakOption> options =
        Arrays.stream(temperatures())
            .parallel()
            .mapToObj(celsius -> option(celsius, possible))
            .toList();
    boolean showsNow = clearing.anyShows();
    boolean scheduleClears =
        SoakChoice.sure(possible.goneBySchedulePct())
            && SoakSamples.clears(end, visibility, shop, cycles);
    List<SoakOption> within =
        options.stream().filter(o -> allowed(o.temperatureC()) && o.clears()).toList();
    Optional<Recommended> recommended =
        new SoakChoice(options, within, possible, most(), this::cost)
            .taken(showsNow, scheduleClears);
    double best = bestAllowed(options);
    double at =
        recommended.filter(r -> r.minutes() > 0).map(Recommended::temperatureC).orElse(best);
    Clearing.Soak soak = clearing.at(at + Temperature.ZERO_CELSIUS);
    Optional<Input> dominant =
        possible.dominant(recommended.map(Recommended::temperatureC).orElse(best));
    Optional<Double> withinLongest = possible.withinPct(best, most());
    SoakNotes notes = new SoakNotes(billet, soak.lines(), soak.crossings(), at, possible);
    return new SoakAdvice(
        notes.lines(),
        notes.crossings(),
        at,
        options,
        recommended,
        recommended.isPresent(),
        possible.goneAlreadyPct(),
        possible.goneBySchedulePct(),
        withinLongest,
        possible.count(),
        possible.leftOut(),
        dominant,
        limits.forgingCelsius(),
        limits.burningCelsius(),
        limits.refusalCelsius(),
        most(),
        notes.all(
            seen, recommended.isPresent() ? List.of() : noneClears(withinLongest, best), dominant));
  }

  /** That nothing clears, and what would have helped: minutes at the best allowed temperature. */
  private List<SoakNote> noneClears(Optional<Double> withinLongestPct, double best) {
    List<SoakNote> all = new ArrayList<>(List.of(new SoakNote.NoneClears(withinLongestPct)));
    all.addAll(new Remedies(billet, shop, visibility).at(best));
    return all;
  }

  private double most() {
    return billet.soak().mostTaken().minutes();
  }

  /** The highest temperature the smith may take: forging limit, own limit, grid of options. */
  private double bestAllowed(List<SoakOption> options) {
    return options.stream()
        .mapToDouble(SoakOption::temperatureC)
        .filter(this::allowed)
        .max()
        .orElse(options.get(0).temperatureC());
  }

  private boolean allowed(double celsius) {
    return celsius <= limits.forgingCelsius()
        && celsius
            <= billet.soak().highest().map(Temperature::celsius).orElse(Double.POSITIVE_INFINITY);
  }

  private SoakOption option(double celsius, SoakSamples possible) {
    OptionalDouble seconds = clearing.secondsAt(celsius + Temperature.ZERO_CELSIUS);
    Optional<Double> minutes = Clearing.minutes(seconds);
    List<OptionRemark> remarks = new ArrayList<>();
    if (celsius > limits.burningCelsius()) {
      remarks.add(OptionRemark.ABOVE_BURNING);
    } else if (celsius > limits.forgingCelsius()) {
      remarks.add(OptionRemark.ABOVE_FORGING);
    }
    if (billet.soak().highest().map(t -> celsius > t.celsius()).orElse(false)) {
      remarks.add(OptionRemark.ABOVE_WISH);
    }
    Optional<SoakFaces.Left> faces = Optional.empty();
    Optional<Double> grain = Optional.empty();
    if (minutes.isPresent()) {
      HeatCurve curve = curve(celsius, seconds.getAsDouble());
      faces = faces().after(curve);
      if (faces.isEmpty()) {
        remarks.add(OptionRemark.EATEN_FIRST);
      }
      grain = Optional.of(this.grain.applyAsDouble(curve));
    }
    Optional<Double> low = possible.minutes(celsius, 0.1);
    Optional<Double> high = possible.minutes(celsius, 0.9);
    return new SoakOption(
        celsius,
        minutes,
        low,
        high,
        faces.isPresent() && minutes.get() <= most(),
        faces.map(f -> f.lostMetres() * 1e3),
        faces.map(f -> f.skin().flats().metres() * 1e3),
        faces.map(f -> f.skin().sides().metres() * 1e3),
        faces.map(f -> f.skin().flats().softMetres() * 1e3),
        faces.map(f -> f.skin().sides().softMetres() * 1e3),
        grain,
        remarks);
  }

  private SoakFaces faces() {
    return new SoakFaces(end, shop, shop.edge(billet.soak().outsideTaken()));
  }

  private Optional<SoakCost> cost(double celsius, double minutes) {
    HeatCurve curve = curve(celsius, minutes * 60);
    return faces()
        .after(curve)
        .map(
            f ->
                new SoakCost(
                    celsius,
                    minutes,
                    grain.applyAsDouble(curve),
                    1e3 * (f.lostMetres() + f.skin().flats().softMetres())));
  }

  private static HeatCurve curve(double celsius, double seconds) {
    return HeatCurve.riseAndHold(
        Shop.DULL_KELVIN, celsius + Temperature.ZERO_CELSIUS, Clearing.RISE_SECONDS, seconds);
  }
}
