package seamsoak.soak;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import seamsoak.billet.Seen;
import seamsoak.soak.SoakAdvice.Recommended;
import seamsoak.soak.SoakAdvice.SoakOption;
import seamsoak.soak.SoakAdvice.TestEtch;
import seamsoak.soak.SoakReason.Kind;

/**
 * Which soak to take, if any: of those that clear the lines within what is allowed the one that
 * costs least, in minutes, grain and skin together.
 *
 * @param options from the coolest to the hottest
 * @param within those that the smith may take and that clear by the middle estimate
 * @param possible the histories that the bands rest on
 * @param mostMinutes longest soak allowed
 * @param cost of a temperature held so many minutes; empty where the fire would eat the billet
 */
record SoakChoice(
    List<SoakOption> options,
    List<SoakOption> within,
    SoakSamples possible,
    double mostMinutes,
    BiFunction<Double, Double, Optional<SoakCost>> cost) {
  /** Share of the samples that must come out clear before something is called done. */
  private static final double SURE_PCT = 90;

  /** Share of the samples from which on a soak is more likely than not for nothing. */
  private static final double EVEN_PCT = 50;

  /**
   * The one to take; empty when none clears.
   *
   * @param showsNow whether a line shows by the middle estimate
   * @param cycles whether the cycles to come clear them by it
   */
  Optional<Recommended> taken(boolean showsNow, boolean cycles) {
    if (!showsNow && sure(possible.goneAlreadyPct())) {
      return Optional.of(none(Kind.NOTHING_SHOWS));
    }
    if (cycles && sure(possible.goneBySchedulePct())) {
      return Optional.of(none(Kind.CYCLES_CLEAR));
    }
    List<SoakCost> costs = within.parallelStream().flatMap(o -> cautious(o).stream()).toList();
    return costs.stream()
        .min(Comparator.comparingDouble(SoakCost::worthMinutes))
        .map(
            best ->
                balanced(
                    best,
                    costs.get(0),
                    possible.count() > 0 ? Kind.BALANCED_BY_HISTORIES : Kind.BALANCED_BY_MIDDLE))
        .or(() -> possible.seen() ? halfOfThose().or(this::likely) : likely().or(this::halfOfThose))
        .or(
            () ->
                within.stream()
                    .max(Comparator.comparingDouble(SoakOption::temperatureC))
                    .map(this::longest));
  }

  /**
   * Where no soak that is allowed clears in nine of ten samples, what clears in the likely case at
   * the least cost: a soak can be done again where an etch still shows a line, and what it cost
   * cannot be undone. What was seen weighs the samples and not the likely case, whose minutes may
   * do nothing for a line that was seen: there half of the samples come first.
   */
  private Optional<Recommended> likely() {
    return cheapest(
        Kind.BALANCED_BY_LIKELY,
        o -> o.minutes().map(Math::ceil).filter(m -> m > 0 && m <= mostMinutes));
  }

  /**
   * Where no line shows in the likely case, or one was looked for, what clears half of those in
   * which one does.
   */
  private Optional<Recommended> halfOfThose() {
    double target = 0.5 * (100 + possible.goneBySchedulePct().orElse(100.0));
    return cheapest(Kind.BALANCED_BY_HALF, o -> least(o.temperatureC(), target));
  }

  private Optional<Recommended> cheapest(Kind kind, Function<SoakOption, Optional<Double>> held) {
    List<SoakCost> costs =
        within.parallelStream()
            .flatMap(
                o -> held.apply(o).stream().flatMap(m -> cost.apply(o.temperatureC(), m).stream()))
            .toList();
    return costs.stream()
        .min(Comparator.comparingDouble(SoakCost::worthMinutes))
        .map(best -> balanced(best, costs.get(0), kind));
  }

  /** The fewest whole minutes that clear in so many samples, if so many are allowed. */
  private Optional<Double> least(double celsius, double percent) {
    int enough = (int) Math.floor(mostMinutes) + 1;
    int tooFew = 0;
    while (enough - tooFew > 1) {
      int middle = (enough + tooFew) / 2;
      if (possible.withinPct(celsius, middle).filter(p -> p >= percent).isPresent()) {
        enough = middle;
      } else {
        tooFew = middle;
      }
    }
    return enough > mostMinutes ? Optional.empty() : Optional.of((double) enough);
  }

  /** What it costs to do in nine of ten samples, or by the middle estimate where there are none. */
  private Optional<SoakCost> cautious(SoakOption option) {
    Optional<Double> minutes = possible.count() == 0 ? option.minutes() : option.minutesHigh();
    return minutes
        .map(Math::ceil)
        .filter(m -> m <= mostMinutes)
        .flatMap(m -> cost.apply(option.temperatureC(), m));
  }

  private Recommended balanced(SoakCost best, SoakCost coolest, Kind kind) {
    SoakOption option =
        within.stream()
            .filter(o -> o.temperatureC() == best.temperatureC())
            .findFirst()
            .orElseThrow();
    return recommended(
        option,
        best.minutes(),
        new SoakReason(
            kind,
            mostMinutes,
            first(),
            Optional.of(best),
            Optional.of(coolest).filter(c -> c != best)));
  }

  private Recommended longest(SoakOption option) {
    return recommended(
        option,
        Math.floor(mostMinutes),
        new SoakReason(
            Kind.HOTTEST_ALLOWED, mostMinutes, first(), Optional.empty(), Optional.empty()));
  }

  /**
   * The etch to wait for: the test etch where one that shows nothing makes a clean blade sure, and
   * the next to come that can show a line where the blade comes clean without a soak at least as
   * likely as not. What a soak has cost cannot be undone; waiting costs an etch.
   */
  private Optional<Seen.Etched> first() {
    LooksToCome looks = possible.looksToCome();
    boolean sure =
        looks
            .testEtch()
            .flatMap(TestEtch::cleanIfNothingPct)
            .filter(p -> p >= SURE_PCT)
            .isPresent();
    return sure
        ? Optional.of(Seen.Etched.AS_COOLED)
        : possible.goneBySchedulePct().filter(p -> p >= EVEN_PCT).flatMap(p -> looks.next());
  }

  private Recommended recommended(SoakOption o, double minutes, SoakReason why) {
    return new Recommended(
        o.temperatureC(),
        minutes,
        o.minutesLow(),
        o.minutesHalf(),
        o.minutesHigh(),
        possible.withinPct(o.temperatureC(), minutes),
        why);
  }

  private Recommended none(Kind kind) {
    return new Recommended(
        options.get(0).temperatureC(),
        0,
        Optional.of(0.0),
        Optional.of(0.0),
        Optional.of(0.0),
        possible.goneBySchedulePct(),
        new SoakReason(kind, mostMinutes, Optional.empty(), Optional.empty(), Optional.empty()));
  }

  /** Whether all but a few samples say so; where there are none the middle estimate decides. */
  static boolean sure(Optional<Double> percent) {
    return percent.map(p -> p >= SURE_PCT).orElse(true);
  }
}
