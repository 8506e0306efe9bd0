package seamsoak.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import seamsoak.billet.Jacket;
import seamsoak.billet.Step;
import seamsoak.property.Correlations;
import seamsoak.schedule.demand.Conflict;
import seamsoak.schedule.demand.Guard;
import seamsoak.schedule.demand.HardeningHeat;
import seamsoak.schedule.demand.Hardens;
import seamsoak.schedule.demand.SteelNow;
import seamsoak.steel.Dispute;

/**
 * What the steels of a billet, or their sheets, do not agree on before the blade is ground.
 *
 * @param course the piece
 * @param refining how it is normalized and refined
 */
record Conflicts(Course course, Refining refining) {
  List<Conflict> all() {
    List<SteelNow> steels = course.steels();
    List<Conflict> all = new ArrayList<>();
    Guard guard = refining.guard();
    for (SteelNow s : steels) {
      s.mayBe().map(m -> new Conflict.UnknownMade(List.of(s.id()), m)).ifPresent(all::add);
    }
    for (SteelNow s : steels) {
      for (Dispute d : s.steel().disputes()) {
        all.add(new Conflict.DisputedSheets(List.of(s.id()), d, refining.cycles().isPresent()));
      }
    }
    course
        .piece()
        .jacket()
        .filter(j -> BenchWork.jacketed(course.piece()))
        .map(j -> new Conflict.JacketOn(List.of(j.name())))
        .ifPresent(all::add);
    all.addAll(stainlessJackets(names(steels)));
    airAndSoft(steels).ifPresent(all::add);
    if (guard.way() != Guard.Way.AIR && !course.heats().kiln()) {
      all.add(new Conflict.NoKiln(names(steels), guard.slow()));
    }
    steels.stream()
        .filter(s -> s.hardens() && s.beyondFormulas())
        .map(this::beyond)
        .forEach(all::add);
    if (steels.stream().noneMatch(SteelNow::hardens)) {
      all.add(new Conflict.NothingHardens(names(steels)));
    }
    return all;
  }

  /** Those that were laid about it at any step: a weld that fails under one fails for good. */
  private List<Conflict> stainlessJackets(List<String> covered) {
    Correlations k = course.shop().correlations();
    return course.billet().steps().stream()
        .filter(Step.Tile.class::isInstance)
        .flatMap(s -> ((Step.Tile) s).jacket().stream())
        .map(Jacket::steel)
        .distinct()
        .filter(s -> k.forging().rule().isStainless(s.analysis()))
        .<Conflict>map(
            s ->
                new Conflict.StainlessJacket(
                    Stream.concat(Stream.of(s.id()), covered.stream()).toList(),
                    k.lines(s.analysis()).alwaysAustenite()))
        .toList();
  }

  private Conflict beyond(SteelNow s) {
    Optional<HardeningHeat> others = HardeningHeat.of(course.steels(), Optional.empty());
    double lowest = s.steel().heatTreatment().harden().map(r -> r.lowC()).orElse(0.0);
    return new Conflict.BeyondFormulas(
        List.of(s.id()),
        s.steel().heatTreatment(),
        others.map(HardeningHeat::told).orElse(List.of()),
        others.isPresent() && lowest > others.get().celsius(),
        others.isPresent() && others.get().celsius() > s.highestAc1C());
  }

  private Optional<Conflict> airAndSoft(List<SteelNow> steels) {
    List<String> hard = new ArrayList<>();
    List<String> soft = new ArrayList<>();
    boolean surely = true;
    for (SteelNow s : steels) {
      Hardens air = s.inAir(course.heats().section(), refining.normalizeC(), course.grainNumber());
      (air == Hardens.NO ? soft : hard).add(s.id());
      surely &= air != Hardens.PERHAPS;
    }
    return hard.isEmpty() || soft.isEmpty()
        ? Optional.empty()
        : Optional.of(new Conflict.HardAndSoftInAir(names(steels), hard, soft, surely));
  }

  static List<String> names(List<SteelNow> steels) {
    return steels.stream().map(SteelNow::id).toList();
  }
}
