package seamsoak.soak;

import java.util.ArrayList;
import java.util.List;
import seamsoak.carbon.Contrast;
import seamsoak.carbon.Eye;
import seamsoak.carbon.LineVisibility;
import seamsoak.carbon.Strip;
import seamsoak.state.SeamPlace;

/** What an eye makes of one seam as a soak goes on, step by step of the solver. */
final class SeamFade {
  private final Eye eye;
  private final List<Double> seconds = new ArrayList<>();
  private final List<Contrast> seen = new ArrayList<>();

  SeamFade(SeamPlace place, LineVisibility visibility) {
    eye = new Eye(place.line().strip(), place.plane(), place.trace(), visibility);
  }

  void note(double atSeconds, Strip strip) {
    seconds.add(atSeconds);
    seen.add(eye.on(strip));
  }

  List<Double> seconds() {
    return seconds;
  }

  Contrast last() {
    return seen.get(seen.size() - 1);
  }

  /**
   * Between two steps what is missing falls nearly straight in its logarithm, the broad mean hardly
   * moves; after the last one nothing is known and it stays.
   */
  Contrast at(double atSeconds) {
    int k = 0;
    while (k < seconds.size() && seconds.get(k) < atSeconds) {
      k++;
    }
    if (k == seconds.size()) {
      return last();
    }
    if (k == 0 || seconds.get(k) == atSeconds) {
      return seen.get(k);
    }
    double part = (atSeconds - seconds.get(k - 1)) / (seconds.get(k) - seconds.get(k - 1));
    Contrast a = seen.get(k - 1);
    Contrast b = seen.get(k);
    double broad = a.broadPct() + part * (b.broadPct() - a.broadPct());
    double from = a.missingPct();
    double to = b.missingPct();
    double missing =
        from > 0 && to > 0 ? from * Math.pow(to / from, part) : from + part * (to - from);
    return new Contrast(broad - missing, broad);
  }
}
