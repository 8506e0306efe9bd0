package seamsoak.kiln;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.schedule.StepKind;

/** Why wishes of one kind do not share a load. */
final class Parting {
  private Parting() {}

  /** Each group beside the next hotter one. */
  static List<Apart> of(StepKind kind, List<List<Wish>> groups) {
    List<Apart> all = new ArrayList<>();
    for (int i = 0; i + 1 < groups.size(); i++) {
      all.add(between(kind, groups.get(i), groups.get(i + 1)));
    }
    return all;
  }

  /** Of intervals that do not all meet two do not, so that some pair is to blame. */
  private static Apart between(StepKind kind, List<Wish> cooler, List<Wish> hotter) {
    for (Wish a : cooler) {
      for (Wish b : hotter) {
        if (!Loads.windowsMeet(a, b)) {
          return new Apart.Windows(kind, window(a), window(b));
        }
      }
    }
    Wish a = falling(cooler);
    Wish b = falling(hotter);
    return new Apart.Falls(kind, List.of(a.billet(), b.billet()), fallsTo(a), fallsTo(b));
  }

  private static Wish falling(List<Wish> group) {
    return group.stream().filter(w -> w.then() instanceof Wish.Then.Fall).findFirst().orElseThrow();
  }

  private static double fallsTo(Wish w) {
    return ((Wish.Then.Fall) w.then()).toC();
  }

  /** What is hardened by its sheet, beside all others that are hardened. */
  static List<Apart> bySheet(List<Wishes> wishes, List<Wish> all) {
    List<Load.Window> sheets =
        wishes.stream().map(Wishes::bySheet).flatMap(Optional::stream).toList();
    List<Load.Window> others =
        Stream.concat(
                sheets.stream(),
                all.stream().filter(w -> w.kind() == StepKind.HARDEN).map(Parting::window))
            .toList();
    return sheets.stream()
        .<Apart>map(
            own ->
                new Apart.BySheet(
                    StepKind.HARDEN,
                    own,
                    others.stream()
                        .filter(o -> o.billet() != own.billet() && meet(own, o))
                        .toList(),
                    others.stream()
                        .filter(o -> o.billet() != own.billet() && !meet(own, o))
                        .toList()))
        .toList();
  }

  private static boolean meet(Load.Window a, Load.Window b) {
    return Math.max(a.lowC(), b.lowC()) <= Math.min(a.highC(), b.highC());
  }

  static Load.Window window(Wish w) {
    return new Load.Window(w.billet(), w.lowC(), w.highC(), w.plannedC());
  }
}
