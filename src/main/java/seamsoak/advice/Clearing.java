package seamsoak.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import seamsoak.billet.Billet;
import seamsoak.billet.BilletWalk;
import seamsoak.billet.Family;
import seamsoak.billet.Shop;
import seamsoak.billet.Stage;
import seamsoak.billet.Workpiece;
import seamsoak.carbon.Edge;
import seamsoak.carbon.EvenCarbon;
import seamsoak.carbon.Line;
import seamsoak.carbon.LineVisibility;
import seamsoak.carbon.Strip;
import seamsoak.carbon.StripSolver;
import seamsoak.heat.HeatCurve;

/**
 * How long a soak takes until no line shows.
 *
 * @param piece before the soak
 * @param visibility when a line shows
 * @param shop the assumptions to compute under
 */
record Clearing(Workpiece piece, LineVisibility visibility, Shop shop) {
  /** Nothing longer is told as an answer. */
  static final double LONGEST_SECONDS = 24 * 3600.0;

  /** Followed further, so that bands end where they end and not at the day's. */
  private static final double FOLLOWED_SECONDS = 20 * LONGEST_SECONDS;

  static final double RISE_SECONDS = 300;

  /** What is left to clear of a billet after its history, followed for its lines only. */
  static Clearing after(Billet billet, Shop shop, LineVisibility visibility) {
    List<Stage> stages = BilletWalk.ofLines(shop).walk(billet);
    return new Clearing(stages.get(stages.size() - 1).piece(), visibility, shop);
  }

  /** Whether any line shows before the soak. */
  boolean anyShows() {
    return piece.families().stream().anyMatch(f -> f.shows(piece.shownFace(), visibility));
  }

  /**
   * Seconds held at a temperature until no line shows, 0 when the rise does it; empty past 20 d.
   */
  OptionalDouble secondsAt(double kelvin) {
    double longest = 0;
    for (Seam seam : showing()) {
      OptionalDouble one = seconds(seam, kelvin);
      if (one.isEmpty()) {
        return one;
      }
      longest = Math.max(longest, one.getAsDouble());
    }
    return OptionalDouble.of(longest);
  }

  private record Seam(Strip strip, double trace) {}

  private List<Seam> showing() {
    Set<Strip> taken = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Seam> seams = new ArrayList<>();
    for (Family f : piece.families()) {
      if (f.shows(piece.shownFace(), visibility) && taken.add(f.strip())) {
        seams.add(new Seam(f.strip(), f.trace(piece.shownFace())));
      }
    }
    return seams;
  }

  private OptionalDouble seconds(Seam seam, double kelvin) {
    Watch watch = new Watch(seam);
    HeatCurve curve =
        HeatCurve.riseAndHold(Shop.DULL_KELVIN, kelvin, RISE_SECONDS, FOLLOWED_SECONDS);
    shop.solver().advance(seam.strip(), curve, Edge.SEALED, watch);
    return Double.isNaN(watch.gone)
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.max(0, watch.gone - RISE_SECONDS));
  }

  /** Notes the moment a line no longer shows, between two steps. */
  private final class Watch implements StripSolver.Watcher {
    private final Seam seam;
    private final EvenCarbon even;
    private double gone = Double.NaN;
    private Fading earlier;
    private Fading before;

    Watch(Seam seam) {
      this.seam = seam;
      this.even = Line.evened(seam.strip());
      this.before = Fading.seen(0, Line.of(seam.strip(), even).dipPct());
      this.earlier = before;
    }

    @Override
    public boolean after(double seconds, Strip strip) {
      Line line = Line.of(strip, even);
      Fading now = Fading.seen(seconds, line.dipPct());
      if (visibility.shows(line, seam.trace())) {
        // what was seen at other heats says nothing of how fast it goes at this one
        earlier = before.seconds() < RISE_SECONDS ? now : before;
        before = now;
        return true;
      }
      gone = now.secondsAt(visibility.dipPct(), earlier, before).orElse(seconds);
      return false;
    }
  }
}
