package seamsoak.soak;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Defaults;
import seamsoak.billet.SectionLine;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Contrast;
import seamsoak.carbon.Edge;
import seamsoak.carbon.LineVisibility;
import seamsoak.heat.HeatCurve;
import seamsoak.state.CrossingReport;
import seamsoak.state.FadeWatch;
import seamsoak.state.LineReport;
import seamsoak.state.SeamCrossing;
import seamsoak.state.SeamPlace;

/**
 * How long a soak takes until no line shows and no crossing of lines.
 *
 * @param piece before the soak
 * @param visibility when a line shows
 * @param shop the assumptions to compute under
 * @param places the seams of the piece
 * @param crossings where they cross
 */
public record Clearing(
    Workpiece piece,
    LineVisibility visibility,
    Shop shop,
    List<SeamPlace> places,
    List<SeamCrossing> crossings) {
  /** Nothing longer is told as an answer. */
  static final double LONGEST_SECONDS = 24 * 3600.0;

  /** Followed further, so that bands end where they end and not at the day's. */
  private static final double FOLLOWED_SECONDS = 20 * LONGEST_SECONDS;

  static final double RISE_SECONDS = Defaults.RISE.seconds();

  private static final double SAME_SECONDS = 1e-6;

  /** A seam that has so little left of what shows adds nothing to a crossing. */
  private static final double NOTHING = 0.1;

  public static Clearing of(Workpiece piece, LineVisibility visibility, Shop shop) {
    List<SeamPlace> places = SeamPlace.of(piece, visibility);
    return new Clearing(piece, visibility, shop, places, SeamCrossing.of(places));
  }

  /** What is left to clear of a billet after its history, followed for its lines only. */
  static Clearing after(Billet billet, Shop shop, LineVisibility visibility) {
    List<Stage> stages = BilletWalk.ofLines(shop).walk(billet);
    return of(stages.get(stages.size() - 1).piece(), visibility, shop);
  }

  /** Whether any line shows before the soak, or any crossing. */
  public boolean anyShows() {
    return places.stream().anyMatch(p -> p.shows(visibility))
        || crossings.stream().anyMatch(c -> c.shows(visibility));
  }

  /**
   * Seconds held at a temperature until nothing shows, 0 when the rise does it; empty past 20 d.
   */
  OptionalDouble secondsAt(double kelvin) {
    return at(kelvin).last();
  }

  /** Nothing longer than a day is told. */
  static Optional<Double> minutes(OptionalDouble seconds) {
    return seconds.orElse(Double.POSITIVE_INFINITY) <= LONGEST_SECONDS
        ? Optional.of(seconds.getAsDouble() / 60)
        : Optional.empty();
  }

  /** A soak at a temperature, followed until nothing shows. */
  Soak at(double kelvin) {
    return new Soak(kelvin);
  }

  /** The seams that show by themselves or where they cross others. */
  private List<SeamPlace> watched() {
    List<SeamPlace> all = new ArrayList<>();
    for (SeamPlace p : places) {
      boolean crosses =
          crossings.stream()
              .anyMatch(c -> (c.first() == p || c.second() == p) && c.shows(visibility));
      if (p.shows(visibility) || crosses) {
        all.add(p);
      }
    }
    return all;
  }

  /** What becomes of each seam in one soak. */
  final class Soak {
    private final Map<SeamPlace, SeamFade> fades = new IdentityHashMap<>();

    private Soak(double kelvin) {
      List<SeamPlace> watched = watched();
      watched.forEach(p -> fades.put(p, new SeamFade(p, visibility)));
      HeatCurve curve =
          HeatCurve.riseAndHold(Shop.DULL_KELVIN, kelvin, RISE_SECONDS, FOLLOWED_SECONDS);
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
      Contrast now = fades.get(p).last();
      double over = now.over(visibility);
      if (over >= 1) {
        return true;
      }
      return over > NOTHING
          && crossings.stream()
              .filter(c -> c.first() == p || c.second() == p)
              .anyMatch(c -> contrast(c, p, now).over(visibility) >= 1);
    }

    /** The crossing with one of its seams as it is now, the other as far as it is known. */
    private Contrast contrast(SeamCrossing c, SeamPlace p, Contrast now) {
      Contrast first = c.first() == p ? now : c.first().contrast().orElseThrow();
      Contrast second = c.second() == p ? now : c.second().contrast().orElseThrow();
      return c.contrast(first, second);
    }

    /** Seconds until a seam no longer shows away from crossings; empty past 20 d. */
    OptionalDouble seconds(SeamPlace place) {
      if (!place.shows(visibility)) {
        return OptionalDouble.of(0);
      }
      SeamFade fade = fades.get(place);
      return passed(fade.seconds(), t -> fade.at(t).over(visibility));
    }

    /** Seconds until a crossing no longer shows. */
    OptionalDouble seconds(SeamCrossing crossing) {
      if (!crossing.shows(visibility)) {
        return OptionalDouble.of(0);
      }
      SeamFade first = fades.get(crossing.first());
      SeamFade second = fades.get(crossing.second());
      TreeSet<Double> times = new TreeSet<>(first.seconds());
      times.addAll(second.seconds());
      // the two count their seconds for themselves: what rounding parts is one moment
      List<Double> apart = new ArrayList<>();
      for (double t : times) {
        if (apart.isEmpty() || t > apart.get(apart.size() - 1) + SAME_SECONDS) {
          apart.add(t);
        }
      }
      return passed(apart, t -> crossing.contrast(first.at(t), second.at(t)).over(visibility));
    }

    /** The lines before it, with the minutes that each takes. */
    List<LineReport> lines() {
      return places.stream().map(p -> LineReport.of(p, visibility, minutes(seconds(p)))).toList();
    }

    /** Where they cross before it, with the minutes that each takes. */
    List<CrossingReport> crossings() {
      return crossings.stream()
          .map(c -> CrossingReport.of(c, visibility, minutes(seconds(c))))
          .toList();
    }

    /** Seconds until nothing shows; empty past 20 d. */
    OptionalDouble last() {
      return Stream.concat(
              places.stream().map(p -> seconds(p)), crossings.stream().map(c -> seconds(c)))
          .reduce(OptionalDouble.of(0), Soak::later);
    }

    private static OptionalDouble later(OptionalDouble a, OptionalDouble b) {
      return a.isEmpty() || b.isPresent() && a.getAsDouble() > b.getAsDouble() ? a : b;
    }

    /** The moment K falls to 1, after the rise; other heats say nothing of how fast. */
    private OptionalDouble passed(List<Double> times, DoubleUnaryOperator over) {
      FadeWatch watch = new FadeWatch(1, over.applyAsDouble(0), RISE_SECONDS - SAME_SECONDS);
      for (double t : times.subList(1, times.size())) {
        OptionalDouble gone = watch.sees(t, over.applyAsDouble(t));
        if (gone.isPresent()) {
          return OptionalDouble.of(Math.max(0, gone.getAsDouble() - RISE_SECONDS));
        }
      }
      return OptionalDouble.empty();
    }
  }
}
