package seamsoak.carbon;

import seamsoak.heat.HeatCurve;
import seamsoak.numeric.TrBdf2;

/**
 * Advances strips through heats: finite volumes on carbon, fluxes by activity, TR-BDF2 in time with
 * steps proposed in diffusion time. Carbon is conserved to rounding.
 *
 * @param surroundings what the fire does to a bare face
 * @param relativeTolerance error allowed per step and cell, relative, with a tenth of it as wt%
 */
public record StripSolver(Surroundings surroundings, double relativeTolerance) {
  private static final double SAFETY = 0.9;
  private static final double MOST_GROWTH = 5;
  private static final double LEAST_GROWTH = 0.2;
  private static final double FIRST_STEP = 0.05;
  private static final double FIRST_CHANGE = 0.3;
  private static final double DAY = 86400;
  private static final int MOST_HALVINGS = 60;

  /** Hundreds of times what long heats take. */
  private static final int MOST_STEPS = 50_000;

  /** Share of the near layer that scale may eat in one step. */
  private static final double MOST_EATEN = 0.2;

  /** A layer that scale has left thinner than this is gone, m. */
  private static final double GONE = 1e-6;

  /** Activation temperature of the clock that steps are proposed in, K; any near diffusion's. */
  private static final double CLOCK = 17000;

  /**
   * A strip after a heat.
   *
   * @param strip as it is then
   * @param carbonLost what left through the edges, by the fire and with the scale, metres times
   *     atoms per metal atom
   * @param metalLost thickness that scale ate at the near edge, m
   * @param massErrorRelative carbon not accounted for over the carbon at the start
   */
  public record Advanced(
      Strip strip, double carbonLost, double metalLost, double massErrorRelative) {}

  /** Looks at the strip after each step. */
  public interface Watcher {
    /** Returns whether to go on. */
    boolean after(double seconds, Strip strip);
  }

  /** With a plane of symmetry at the far edge. */
  public Advanced advance(Strip strip, HeatCurve curve, Edge near) {
    return advance(strip, curve, near, Edge.SEALED);
  }

  /** Through a whole curve. */
  public Advanced advance(Strip strip, HeatCurve curve, Edge near, Edge far) {
    return new Run(strip, near, far, null).through(curve);
  }

  /** Until the curve ends or the watcher has seen enough, a plane of symmetry at the far edge. */
  public Advanced advance(Strip strip, HeatCurve curve, Edge near, Watcher watcher) {
    return new Run(strip, near, Edge.SEALED, watcher).through(curve);
  }

  /** Activity of carbon in the face at which a strip's plane of interest lies, at a temperature. */
  public double seamActivity(Strip strip, double kelvin) {
    int seam = strip.seam();
    if (seam == 0) {
      return strip.metal(0).law().at(kelvin).activity(strip.ratio(0));
    }
    if (strip.metalIndex(seam - 1) == strip.metalIndex(seam)) {
      double between = 0.5 * (strip.ratio(seam - 1) + strip.ratio(seam));
      return strip.metal(seam).law().at(kelvin).activity(between);
    }
    return new StripSystem(strip, Edge.SEALED, Edge.SEALED, surroundings, 1)
        .interfaceActivity(seam, kelvin);
  }

  private final class Run {
    private final Watcher watcher;
    private final double carbonAtStart;
    private final Scaling near;
    private final Scaling far;
    private Strip strip;
    private StripSystem system;
    private TrBdf2 stepper;
    private double[] y;
    private double[] after;
    private double lost;
    private double lostCorrection;
    private double clockStep;
    private double elapsed;
    private int steps;

    /** Whether the stepper holds the fluxes at the start of the next step. */
    private boolean goesOn;

    Run(Strip strip, Edge near, Edge far, Watcher watcher) {
      this.watcher = watcher;
      this.carbonAtStart = strip.carbon();
      this.near = new Scaling(near, surroundings, strip.scaledMetres());
      this.far = new Scaling(far, surroundings, strip.farScaledMetres());
      take(strip);
    }

    private void take(Strip next) {
      strip = next;
      system = new StripSystem(next, near.edge(), far.edge(), surroundings, relativeTolerance);
      stepper = new TrBdf2(system);
      goesOn = false;
      y = next.ratios();
      after = new double[y.length];
      near.startAnew(next.metal(0));
      far.startAnew(next.metal(next.cells() - 1));
    }

    private boolean sealed() {
      return near.sealed() && far.sealed();
    }

    Advanced through(HeatCurve curve) {
      for (HeatCurve.Segment segment : Jumps.parted(curve, strip.metals())) {
        if (!through(segment)) {
          break;
        }
      }
      Strip end = now();
      double carbon = end.carbon();
      double error =
          carbonAtStart == 0
              ? 0
              : (carbonAtStart - carbon - (lost + lostCorrection)) / carbonAtStart;
      return new Advanced(end, lost + lostCorrection, near.metalLost(), error);
    }

    private Strip now() {
      system.recession().eat(near.eaten(), near.eaten(), far.eaten(), far.eaten());
      return strip.with(system.thicknesses(), y.clone(), near.scaled(), far.scaled());
    }

    private boolean through(HeatCurve.Segment segment) {
      double t = 0;
      goesOn &= system.enter(segment);
      if (clockStep == 0) {
        clockStep = firstStep(segment);
      }
      while (t < segment.seconds()) {
        double left = segment.seconds() - t;
        double proposed = clockStep / rate(segment, t);
        // a rising curve speeds the clock up within the step: look at its end too
        double end = Math.min(proposed, left);
        proposed = Math.min(proposed, 2 * clockStep / (rate(segment, t) + rate(segment, t + end)));
        boolean clipped = proposed >= left * (1 - 1e-12);
        double step = limitEaten(segment, t, clipped ? left : proposed);
        clipped &= step == left;
        double took = accepted(segment, t, step);
        clipped &= took == step;
        double factor =
            Math.max(
                LEAST_GROWTH,
                Math.min(
                    MOST_GROWTH, SAFETY * Math.pow(Math.max(stepper.error(), 1e-9), -1.0 / 3)));
        double spent = took * 0.5 * (rate(segment, t) + rate(segment, t + took));
        clockStep = clipped ? Math.max(clockStep, spent * factor) : spent * factor;
        t = clipped ? segment.seconds() : t + took;
        elapsed += took;
        if (dropped()) {
          system.enter(segment);
        }
        if (watcher != null && !watcher.after(elapsed, now())) {
          return false;
        }
      }
      return true;
    }

    /**
     * A first step in the time of the clock: a small part of what diffusion takes across the
     * thinnest cell, or longer where nothing changes by much more than the tolerance. Reckoned at
     * the hotter end, where things happen.
     */
    private double firstStep(HeatCurve.Segment segment) {
      double end = segment.toKelvin() > segment.fromKelvin() ? segment.seconds() : 0;
      double speed = stepper.speed(end, segment.seconds(), y);
      goesOn = end == 0;
      double fastest = system.fastest(y);
      double across =
          fastest > 0 ? FIRST_STEP * system.thinnest() * system.thinnest() / fastest : 0;
      double seconds = Math.max(across, FIRST_CHANGE / Math.max(speed, FIRST_CHANGE / DAY));
      return seconds * rate(segment, end);
    }

    private double rate(HeatCurve.Segment segment, double t) {
      return Math.exp(-CLOCK / segment.kelvinAt(t));
    }

    /**
     * Takes one step that the error estimate accepts, shortening it as needed; returns its length.
     */
    private double accepted(HeatCurve.Segment segment, double t, double wanted) {
      double step = wanted;
      int failures = 0;
      int refused = 0;
      if (++steps > MOST_STEPS) {
        throw new IllegalStateException(
            "the carbon solver gets nowhere at " + segment + " after " + t + " s");
      }
      for (int i = 0; i < MOST_HALVINGS; i++) {
        double atNear = near.eatenIn(segment, t, step);
        double atFar = far.eatenIn(segment, t, step);
        system
            .recession()
            .eat(near.eaten(), near.eaten() + atNear, far.eaten(), far.eaten() + atFar);
        boolean done = goesOn ? stepper.stepOn(t, step, y, after) : stepper.step(t, step, y, after);
        goesOn = true;
        if (!done && ++failures >= 3) {
          done = stepper.eulerStep(t, step, y, after);
        }
        if (done && stepper.error() <= 1) {
          accept(atNear, atFar);
          return step;
        }
        step *= done ? shortened(stepper.error(), ++refused) : 0.5;
      }
      throw new IllegalStateException(
          "the carbon solver found no step at " + segment + " after " + t + " s");
    }

    /**
     * The factor for a step with too large an error. Where it is refused again, a front bends the
     * course within the step, and the error shrinks no faster than the step itself.
     */
    private static double shortened(double error, int refused) {
      return Math.max(LEAST_GROWTH, SAFETY * (refused > 1 ? 1 / error : Math.pow(error, -1.0 / 3)));
    }

    private void accept(double atNear, double atFar) {
      double out = stepper.throughLastFace() - stepper.throughFirstFace();
      double sum = lost + out;
      lostCorrection += Math.abs(lost) >= Math.abs(out) ? (lost - sum) + out : (out - sum) + lost;
      lost = sum;
      stepper.goOn(after);
      near.eats(atNear);
      far.eats(atFar);
      double[] swap = y;
      y = after;
      after = swap;
    }

    private double limitEaten(HeatCurve.Segment segment, double t, double step) {
      if (sealed()) {
        return step;
      }
      double atNear = MOST_EATEN * system.recession().nearMetres(near.eaten(), far.eaten());
      double atFar = MOST_EATEN * system.recession().farMetres(near.eaten(), far.eaten());
      double s = step;
      while (near.eatenIn(segment, t, s) > atNear || far.eatenIn(segment, t, s) > atFar) {
        s *= 0.5;
      }
      return s;
    }

    /** Whether scale has come through the zone at an edge; its last trace goes with the scale. */
    private boolean dropped() {
      if (sealed()) {
        return false;
      }
      Recession left = system.recession();
      boolean nearGone = !near.sealed() && left.nearMetres(near.eaten(), far.eaten()) < GONE;
      boolean farGone = !far.sealed() && left.farMetres(near.eaten(), far.eaten()) < GONE;
      if (!nearGone && !farGone) {
        return false;
      }
      if (left.oneZone()) {
        throw new IllegalArgumentException("all of the metal is scaled away");
      }
      Strip now = now();
      int from = nearGone ? left.nearCells() : 0;
      int to = farGone ? left.farFrom() : now.cells();
      if (from >= to) {
        throw new IllegalArgumentException("all of the metal is scaled away");
      }
      goes(now.part(0, from), near);
      goes(now.part(to, now.cells()), far);
      Strip rest = now.part(from, to);
      take(rest.with(rest.thicknesses(), rest.ratios(), near.scaled(), far.scaled()));
      return true;
    }

    private void goes(Strip gone, Scaling at) {
      lost += gone.carbon();
      at.takes(gone.metres());
    }
  }
}
