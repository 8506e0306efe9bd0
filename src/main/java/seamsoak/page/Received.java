package seamsoak.page;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Ids of what was sent and taken: whoever has not heard of it sends it once more. */
final class Received {
  private static final int MOST = 20_000;

  /** As many as may still be on a phone when a run ends. */
  private static final int MOST_KEPT = 200;

  private final Set<String> ids = new LinkedHashSet<>();

  synchronized boolean has(String id) {
    return ids.contains(id);
  }

  synchronized void add(String id) {
    ids.add(id);
    if (ids.size() > MOST) {
      ids.remove(ids.iterator().next());
    }
  }

  /** The last ones, for another run. */
  synchronized List<String> last() {
    return ids.stream().skip(Math.max(0, ids.size() - MOST_KEPT)).toList();
  }
}
