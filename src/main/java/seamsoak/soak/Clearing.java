package seamsoak.soak;

import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Defaults;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.carbon.Sight;
import seamsoak.heat.HeatCurve;
import seamsoak.state.Etch;
import seamsoak.state.SeamCrossing;
import seamsoak.state.SeamPlace;
import seamsoak.unit.Temperature;

/**
 * How long a piece has to be held until no line shows in the finished blade, and no crossing of
 * lines. It is followed at one heat; a rise and the cycles to come count for as many seconds there
 * as move as much carbon.
 *
 * @param piece before the soak
 * @param finished what the finished blade shows
 * @param shop the assumptions to compute under
 * @param places the seams of the piece
 * @param crossings where they cross
 */
public record Clearing(
    Workpiece piece,
    Etch finished,
    Shop shop,
    List<SeamPlace> places,
    List<SeamCrossing> crossings) {
  /** Nothing longer is told as an answer. */
  static final double LONGEST_SECONDS = 24 * 3600.0;

  /** Followed further, so that bands end where they end and not at the day's. */
  private static final double FOLLOWED_SECONDS = 20 * LONGEST_SECONDS;

  static final double RISE_SECONDS = Defaults.RISE.seconds();

  public static Clearing of(Workpiece piece, Etch finished, Shop shop) {
    List<SeamPlace> places = SeamPlace.of(piece, shop.assumptions().broadMetres());
    return new Clearing(piece, finished, shop, places, SeamCrossing.of(places));
  }

  /** What is left to clear of a billet after its history, followed for its lines only. */
  static Clearing after(Billet billet, Shop shop, Etch finished) {
    List<Stage> stages = BilletWalk.ofLines(shop).walk(billet);
    return of(stages.get(stages.size() - 1).piece(), finished, shop);
  }

  /** The highest contrast of any line or crossing in an etch. */
  public double brightest(Etch etch) {
    return Stream.concat(
            places.stream().map(p -> p.contrast(etch)),
            crossings.stream().map(c -> c.contrast(etch)))
        .max(Double::compare)
        .orElse(0.0);
  }

  /** Whether a line would show in the finished blade as it is, or a crossing. */
  public boolean anyShows() {
    return brightest(finished) >= 1;
  }

  /**
   * Seconds to hold at a heat until nothing shows, 0 when the rise and the cycles to come do it;
   * infinite past 20 d.
   */
  double secondsAt(double celsius, Worth worth) {
    double[] heat = {celsius};
    return Faded.of(this, holds(heat), heat, worth).at(celsius).secondsToClear();
  }

  /** What a fire that is meant to have a temperature has under these assumptions, K. */
  double kelvin(double celsius) {
    return celsius + Temperature.ZERO_CELSIUS + shop.assumptions().kelvinOff();
  }

  /** Held at each of some temperatures. */
  Hold[] holds(double[] celsius) {
    return Arrays.stream(celsius).mapToObj(c -> at(kelvin(c))).toArray(Hold[]::new);
  }

  /** Nothing longer than a day is told. */
  static Optional<Double> minutes(double seconds) {
    return seconds <= LONGEST_SECONDS ? Optional.of(Math.max(0, seconds) / 60) : Optional.empty();
  }

  /** A hold at a heat, followed until nothing is left that could show. */
  Hold at(double kelvin) {
    return new Hold(kelvin);
  }

  /** The seams that are not too faint by themselves or where they cross others. */
  private List<SeamPlace> watched() {
    Set<SeamPlace> all = Collections.newSetFromMap(new IdentityHashMap<>());
    places.stream().filter(p -> p.contrast(finished) > Fade.FAINTEST).forEach(all::add);
    crossings.stream()
        .filter(c -> c.contrast(finished) > Fade.FAINTEST)
        .forEach(
            c -> {
              all.add(c.first());
              all.add(c.second());
            });
    return places.stream().filter(all::contains).toList();
  }

  /** What becomes of each seam in one hold. */
  final class Hold {
    private final Map<SeamPlace, SeamFade> fades = new IdentityHashMap<>();

    private Hold(double kelvin) {
      List<SeamPlace> watched = watched();
      watched.forEach(p -> fades.put(p, new SeamFade(p, shop.assumptions().broadMetres())));
      HeatCurve curve = HeatCurve.hold(kelvin, FOLLOWED_SECONDS);
      Set<SectionLine> lines = Collections.newSetFromMap(new IdentityHashMap<>());
      watched.stream()
          .map(SeamPlace::line)
          .filter(lines::add)
          .forEach(l -> follow(l, watched, curve));
    }

    private void follow(SectionLine line, List<SeamPlace> watched, HeatCurve curve) {
      List<SeamPlace> own = watched.stream().filter(p -> p.line() == line).toList();
      own.forEach(p -> fades.get(p).note(0, line.strip()));
      shop.solver()
          .advance(
              line.strip(),
              curve,
              Edge.SEALED,
              (seconds, strip) -> {
                own.forEach(p -> fades.get(p).note(seconds, strip));
                return own.stream().anyMatch(this::goesOn);
              });
    }

    private boolean goesOn(SeamPlace p) {
      Sight now = fades.get(p).last();
      return finished.contrast(p.carbon().steel(), now) > Fade.FAINTEST
          || crossings.stream()
              .filter(c -> c.first() == p || c.second() == p)
              .anyMatch(c -> contrast(c, p, now) > Fade.FAINTEST);
    }

    /** The crossing with one of its seams as it is now, the other as it was. */
    private double contrast(SeamCrossing c, SeamPlace p, Sight now) {
      Sight first = c.first() == p ? now : c.first().sight().orElseThrow();
      Sight second = c.second() == p ? now : c.second().sight().orElseThrow();
      return c.contrast(finished, first, second);
    }

    /** How a seam fades away from crossings. */
    Fade fade(SeamPlace place) {
      SeamFade seen = fades.get(place);
      if (seen == null) {
        return new Fade(place.contrast(finished), new double[Fade.LEVELS.length]);
      }
      double[] contrast =
          seen.seen().stream()
              .mapToDouble(s -> finished.contrast(place.carbon().steel(), s))
              .toArray();
      return Fade.of(seen.seconds(), contrast);
    }

    /** How a crossing fades. */
    Fade fade(SeamCrossing crossing) {
      if (!(crossing.contrast(finished) > Fade.FAINTEST)) {
        return new Fade(crossing.contrast(finished), new double[Fade.LEVELS.length]);
      }
      List<Double> first = fades.get(crossing.first()).seconds();
      List<Double> second = fades.get(crossing.second()).seconds();
      // the two count their seconds for themselves
      List<Double> moments = first.size() < second.size() ? second : first;
      double[] contrast =
          moments.stream().mapToDouble(t -> contrast(crossing, finished, t)).toArray();
      return Fade.of(moments, contrast);
    }

    /** Contrast of a seam in any etch after so many seconds. */
    double contrast(SeamPlace place, Etch etch, double seconds) {
      SeamFade seen = fades.get(place);
      return seen == null
          ? place.contrast(etch)
          : between(
              seen.place(seconds),
              k -> etch.contrast(place.carbon().steel(), seen.seen().get((int) k)));
    }

    /** The same of a crossing. */
    double contrast(SeamCrossing c, Etch etch, double seconds) {
      SeamFade first = fades.get(c.first());
      SeamFade second = fades.get(c.second());
      if (first == null || second == null) {
        return c.contrast(etch);
      }
      double other = second.place(seconds);
      return between(
          first.place(seconds),
          i ->
              between(
                  other,
                  j -> c.contrast(etch, first.seen().get((int) i), second.seen().get((int) j))));
    }

    /** Between two steps a contrast falls nearly straight in its logarithm. */
    private static double between(double place, DoubleUnaryOperator atStep) {
      double step = Math.floor(place);
      double part = place - step;
      double from = atStep.applyAsDouble(step);
      if (part == 0) {
        return from;
      }
      double to = atStep.applyAsDouble(step + 1);
      return from > 0 && to > 0 ? from * Math.pow(to / from, part) : from + part * (to - from);
    }

    /** Of everything together. */
    Fade all() {
      return Stream.concat(places.stream().map(this::fade), crossings.stream().map(this::fade))
          .reduce(Fade.NOTHING, Fade::with);
    }

    /** The highest contrast of any line or crossing in an etch after so many seconds. */
    double brightest(Etch etch, double seconds) {
      ToDoubleFunction<SeamPlace> ofPlace = p -> contrast(p, etch, seconds);
      ToDoubleFunction<SeamCrossing> ofCrossing = c -> contrast(c, etch, seconds);
      return Math.max(
          places.stream().mapToDouble(ofPlace).max().orElse(0),
          crossings.stream().mapToDouble(ofCrossing).max().orElse(0));
    }
  }
}
