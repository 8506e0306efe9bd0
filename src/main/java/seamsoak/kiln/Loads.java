package seamsoak.kiln;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import seamsoak.schedule.StepKind;
import seamsoak.schedule.demand.HardeningHeat;

/** Wishes of one kind, put into as few loads as do for them. */
final class Loads {
  /** Nearer together than this two windows count as meeting, K. */
  private static final double NEAR = HardeningHeat.NEAR;

  /** What falls with the kiln to heats so near falls to one, K; as near as a hold is counted. */
  private static final double FALLS_ALIKE = 15;

  /** From one quench until the next piece can leave, min; common practice, no source. */
  static final double TURN = 3;

  private Loads() {}

  /**
   * The groups that share a heat, the coolest first: a kiln climbs sooner than it falls.
   *
   * @param wishes of one kind, each of another billet
   */
  static List<List<Wish>> groups(List<Wish> wishes) {
    List<List<Wish>> groups = new ArrayList<>();
    List<Wish> sorted =
        wishes.stream()
            .sorted(Comparator.comparingDouble(Wish::highC).thenComparing(Wish::billet))
            .toList();
    for (Wish wish : sorted) {
      Optional<List<Wish>> group = groups.stream().filter(g -> meets(g, wish)).findFirst();
      group.ifPresentOrElse(g -> g.add(wish), () -> groups.add(new ArrayList<>(List.of(wish))));
    }
    groups.sort(Comparator.comparingDouble(Loads::celsius));
    return groups;
  }

  private static boolean meets(List<Wish> group, Wish wish) {
    double high = Math.min(high(group), wish.highC());
    double low = Math.max(low(group), wish.lowC());
    return low <= high + NEAR && group.stream().allMatch(g -> fallAlike(g, wish));
  }

  static boolean windowsMeet(Wish a, Wish b) {
    return Math.max(a.lowC(), b.lowC()) <= Math.min(a.highC(), b.highC()) + NEAR;
  }

  /** Whether the kiln can do for both what it does when the hold is over. */
  static boolean fallAlike(Wish one, Wish other) {
    return !(one.then() instanceof Wish.Then.Fall a)
        || !(other.then() instanceof Wish.Then.Fall b)
        || Math.abs(a.toC() - b.toC()) <= FALLS_ALIKE;
  }

  private static double low(List<Wish> group) {
    return group.stream().mapToDouble(Wish::lowC).max().orElseThrow();
  }

  private static double high(List<Wish> group) {
    return group.stream().mapToDouble(Wish::highC).min().orElseThrow();
  }

  /** The middle of what was planned, to 5 degrees, within what all share. */
  static double celsius(List<Wish> group) {
    double planned = group.stream().mapToDouble(Wish::plannedC).average().orElseThrow();
    if (group.stream().allMatch(w -> w.plannedC() == planned)) {
      return planned;
    }
    double low = low(group);
    double high = high(group);
    // where they only just miss each other the cooler end is taken: it undoes nothing
    return Math.min(high, Math.max(low, HardeningHeat.round(planned)));
  }

  /** When a piece goes in and out. */
  record Turn(Wish wish, double in, double least, OptionalDouble most, double held) {
    double out() {
      return in + wish.riseMinutes() + held;
    }
  }

  /** The pieces of a load in the order in which they leave. */
  static List<Turn> turns(List<Wish> group, double celsius) {
    List<Wish> inOrder =
        group.stream()
            .sorted(
                Comparator.comparing((Wish w) -> w.then() instanceof Wish.Then.Fall)
                    .thenComparing(w -> w.riseMinutes() + w.hold().minutes(celsius))
                    .thenComparing(Wish::billet))
            .toList();
    double last =
        inOrder.stream()
            .mapToDouble(w -> w.riseMinutes() + w.hold().minutes(celsius))
            .max()
            .orElse(0);
    boolean quench = group.get(0).kind() == StepKind.HARDEN;
    List<Turn> turns = new ArrayList<>();
    double free = 0;
    for (Wish w : inOrder) {
      double least = w.hold().minutes(celsius);
      OptionalDouble most = w.most().minutes(celsius, least);
      double ready = w.riseMinutes() + least;
      // One opening of the door does for all where that harms none; a quench takes its turn.
      double wanted =
          quench
              ? Math.max(ready, free)
              : most.orElse(Double.MAX_VALUE) >= least + last - ready ? last : ready;
      double waits = wanted - ready;
      boolean later = waits > 0 && most.orElse(Double.MAX_VALUE) < least + waits;
      turns.add(new Turn(w, later ? waits : 0, least, most, later ? least : least + waits));
      free = wanted + TURN;
    }
    return turns;
  }
}
