package seamsoak.soak;

import java.util.ArrayList;
import java.util.List;
import seamsoak.carbon.Eye;
import seamsoak.carbon.Sight;
import seamsoak.carbon.Strip;
import seamsoak.state.SeamPlace;

/** What an eye makes of one seam as a hold goes on, step by step of the solver. */
final class SeamFade {
  private final Eye eye;
  private final List<Double> seconds = new ArrayList<>();
  private final List<Sight> seen = new ArrayList<>();

  SeamFade(SeamPlace place, double broadMetres) {
    eye = new Eye(place.line().strip(), place.plane(), place.trace(), broadMetres);
  }

  void note(double atSeconds, Strip strip) {
    seconds.add(atSeconds);
    seen.add(eye.on(strip));
  }

  List<Double> seconds() {
    return seconds;
  }

  List<Sight> seen() {
    return seen;
  }

  Sight last() {
    return seen.get(seen.size() - 1);
  }

  /**
   * Where a moment lies among the steps: whole for the step, a fraction between two; after the last
   * one nothing is known and it stays.
   */
  double place(double atSeconds) {
    int k = 0;
    while (k < seconds.size() && seconds.get(k) < atSeconds) {
      k++;
    }
    if (k == seconds.size()) {
      return k - 1;
    }
    return k == 0 || seconds.get(k) == atSeconds
        ? k
        : k - 1 + (atSeconds - seconds.get(k - 1)) / (seconds.get(k) - seconds.get(k - 1));
  }
}
