package seamsoak.soak;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import seamsoak.billet.Billet;
import seamsoak.billet.Resolution;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.heat.HeatCurve;
import seamsoak.soak.SoakAdvice.OptionRemark;
import seamsoak.soak.SoakAdvice.Recommended;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.state.Etch;
import seamsoak.state.EtchBand;
import seamsoak.state.Limits;
import seamsoak.unit.Temperature;

/** Finds the soak that clears the lines of a billet, what each would cost and how sure that is. */
public final class SoakAdvisor {
  private static final double STEP = 10;

  /** So far above the lowest heat of a soak there is austenite whatever the carbon, K. */
  private static final double FORMED_KELVIN = 100;

  private final Billet billet;
  private final Shop shop;
  private final Workpiece end;
  private final ToCome toCome;
  private final ToDoubleFunction<HeatCurve> grain;
  private final Limits limits;
  private final Worth worth;
  private final Clearing clearing;
  private Clearing.Hold[] holds;
  private Faded faded;

  /**
   * @param toCome what comes if there is no soak
   * @param grain its number after a curve, the grains forming anew
   */
  public SoakAdvisor(
      Billet billet, Shop shop, Stage end, ToCome toCome, ToDoubleFunction<HeatCurve> grain) {
    this.billet = billet;
    this.shop = shop;
    this.end = end.piece();
    this.toCome = toCome;
    this.grain = grain;
    this.limits = Limits.of(billet, this.end, shop);
    this.worth = Worth.of(this.end, toCome.cycles());
    this.clearing = Clearing.of(this.end, likely(toCome.finished()), shop);
  }

  /** What heats are worth to this piece. */
  public Worth worth() {
    return worth;
  }

  private Etch likely(EtchBand band) {
    return band.at(shop.assumptions().ferritePlace());
  }

  /** Temperatures from the lowest at which the body is austenite to the refusal limit, degC. */
  double[] temperatures() {
    double highest = Math.floor(limits.refusalCelsius() / STEP) * STEP;
    double lowest = Math.min(highest, Math.ceil(limits.fullAusteniteCelsius() / STEP) * STEP);
    int count = (int) Math.round((highest - lowest) / STEP) + 1;
    return IntStream.range(0, count).mapToDouble(i -> lowest + i * STEP).toArray();
  }

  /**
   * A few temperatures over the same range, between which seconds go straight in their logarithms
   * within 2 %: near the lowest, where austenite has yet to form, they stand closer.
   */
  public double[] nodes() {
    double[] all = temperatures();
    double lowest = all[0];
    double highest = all[all.length - 1];
    return DoubleStream.of(lowest, lowest + FORMED_KELVIN, Faded.CYCLES_CELSIUS, highest)
        .filter(c -> c >= lowest && c <= highest)
        .sorted()
        .distinct()
        .toArray();
  }

  /**
   * By node, how much longer this history takes on the answer's grid than on that of the samples,
   * on the mean over the contrasts that both come down to; 1 where there are none.
   */
  public double[] overSamples() {
    Shop coarse = new Shop(shop.correlations(), shop.assumptions(), Resolution.SAMPLE);
    Clearing sample = Clearing.after(billet, coarse, clearing.finished());
    Faded fine = faded();
    double[] nodes = fine.celsius();
    return IntStream.range(0, nodes.length)
        .parallel()
        .mapToDouble(k -> fine.fades()[k].longerThan(sample.at(sample.kelvin(nodes[k])).all()))
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
    States states = states();
    boolean scheduleClears = states.brightest()[SoakSamples.BLADE] < 1;
    List<SoakOption> within =
        options.stream().filter(o -> allowed(o.temperatureC()) && o.clears()).toList();
    Optional<Recommended> recommended =
        notCarbon(possible)
            ? Optional.empty()
            : new SoakChoice(options, within, possible, most(), this::cost)
                .taken(showsNow, scheduleClears);
    double best = bestAllowed(options);
    double at =
        recommended.filter(r -> r.minutes() > 0).map(Recommended::temperatureC).orElse(best);
    SoakLines told =
        new SoakLines(
            states,
            possible,
            billet.steps().size(),
            clearing.at(at + Temperature.ZERO_CELSIUS),
            faded().at(at));
    Optional<Input> dominant =
        possible.dominant(recommended.map(Recommended::temperatureC).orElse(best));
    Optional<Double> withinLongest = possible.withinPct(best, most());
    SoakNotes notes = new SoakNotes(billet, told.lines(), told.crossings(), at, possible);
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
        possible.looksToCome().testEtch(),
        possible.evidence(),
        possible.count(),
        possible.leftOut(),
        dominant,
        limits.forgingCelsius(),
        limits.burningCelsius(),
        limits.refusalCelsius(),
        most(),
        notes.all(
            seen,
            recommended.isPresent() || notCarbon(possible)
                ? List.of()
                : noneClears(withinLongest, best),
            dominant));
  }

  /** What no soak changes is not soaked. */
  private static boolean notCarbon(SoakSamples possible) {
    return possible
        .evidence()
        .flatMap(SoakAdvice.Evidence::notCarbonPct)
        .filter(p -> p >= SoakAdvice.NOT_CARBON_PCT)
        .isPresent();
  }

  /** That nothing clears, and what would have helped: minutes at the best allowed temperature. */
  private List<SoakNote> noneClears(Optional<Double> withinLongestPct, double best) {
    List<SoakNote> all = new ArrayList<>(List.of(new SoakNote.NoneClears(withinLongestPct)));
    all.addAll(new Remedies(billet, shop, toCome).at(best));
    return all;
  }

  /** The likely case at the nodes. */
  private Faded faded() {
    if (faded == null) {
      double[] nodes = nodes();
      holds =
          Arrays.stream(nodes)
              .parallel()
              .mapToObj(c -> clearing.at(clearing.kelvin(c)))
              .toArray(Clearing.Hold[]::new);
      faded = Faded.of(clearing, holds, nodes, worth);
    }
    return faded;
  }

  private States states() {
    int cool = Faded.coolest(faded().celsius());
    return new States(
        clearing,
        holds[cool],
        faded().cycles()[cool],
        toCome.each().stream().map(this::likely).toList());
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
    double seconds = faded().at(celsius).secondsToClear();
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
    List<Optional<Double>> band = possible.minutes(celsius);
    Map<Double, SoakFaces.Left> left =
        faces(celsius, Stream.of(minutes, band.get(2)).flatMap(Optional::stream).toList());
    Optional<SoakFaces.Left> faces = minutes.map(left::get);
    if (minutes.isPresent() && faces.isEmpty()) {
      remarks.add(OptionRemark.EATEN_FIRST);
    }
    Optional<Double> grain = minutes.map(m -> this.grain.applyAsDouble(curve(celsius, seconds)));
    return new SoakOption(
        celsius,
        minutes,
        band.get(0),
        band.get(1),
        band.get(2),
        band.get(2),
        faces.isPresent() && minutes.get() <= most(),
        faces.map(f -> f.lostMetres() * 1e3),
        faces.map(f -> f.skin().flats().metres() * 1e3),
        faces.map(f -> f.skin().sides().metres() * 1e3),
        faces.map(f -> f.skin().flats().softMetres() * 1e3),
        faces.map(f -> f.skin().sides().softMetres() * 1e3),
        grain,
        band.get(2).flatMap(m -> Optional.ofNullable(left.get(m)).map(f -> cost(celsius, m, f))),
        remarks);
  }

  /** By minutes; in the kiln where there is one that gets there. */
  private Map<Double, SoakFaces.Left> faces(double celsius, List<Double> minutes) {
    Edge outside = shop.edge(billet.soak().outsideTaken());
    return new SoakFaces(end, shop, outside.inStillAir(billet.equipment().kilnReaches(celsius)))
        .after(celsius, minutes);
  }

  private Optional<SoakCost> cost(double celsius, double minutes) {
    return Optional.ofNullable(faces(celsius, List.of(minutes)).get(minutes))
        .map(f -> cost(celsius, minutes, f));
  }

  private SoakCost cost(double celsius, double minutes, SoakFaces.Left left) {
    return new SoakCost(
        celsius,
        minutes,
        grain.applyAsDouble(curve(celsius, minutes * 60)),
        1e3 * (left.lostMetres() + left.skin().flats().softMetres()),
        1e3 * (left.lostMetres() + left.skin().sides().softMetres()));
  }

  /** Of a soak. */
  public static HeatCurve curve(double celsius, double seconds) {
    return HeatCurve.riseAndHold(
        Shop.DULL_KELVIN, celsius + Temperature.ZERO_CELSIUS, Clearing.RISE_SECONDS, seconds);
  }
}
