package seamsoak.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import seamsoak.billet.Billet;
import seamsoak.billet.Exposure;
import seamsoak.billet.Heat;
import seamsoak.billet.Jacket;
import seamsoak.billet.Step;
import seamsoak.source.Caution;
import seamsoak.steel.Element;
import seamsoak.steel.Hardenability;
import seamsoak.steel.Steel;

/**
 * The cautions of the steps of a billet and of its schedule.
 *
 * @param table all cautions
 * @param steels in the work
 */
record StepCautions(CautionTable table, List<Steel> steels) {
  private static final double HOT_CELSIUS = 1100;

  /** Content from which a steel counts as alloyed with nickel or chromium, wt%. */
  private static final double ALLOYED_PCT = 1;

  /** For the stack, then for each step of a billet; a jacket counts until it is off. */
  List<List<String>> ofHistory(Billet billet) {
    List<List<String>> all = new ArrayList<>(List.of(List.of()));
    Set<String> jacket = Set.of();
    for (Step step : billet.steps()) {
      if (step instanceof Step.Tile tile) {
        jacket = tile.jacket().map(Jacket::coatingTaken).map(Condition::ofJacket).orElse(Set.of());
      }
      double hottest =
          step.heats().stream().map(Heat::at).mapToDouble(t -> t.celsius()).max().orElse(0);
      Set<String> conditions = new HashSet<>(jacket);
      if (step instanceof Step.Weld weld && weld.facesTaken() == Exposure.COVERED) {
        conditions.add(Condition.FLUX.word());
      }
      all.add(at(step.name(), hottest, conditions));
      if (step instanceof Step.Unjacket) {
        jacket = Set.of();
      }
    }
    return List.copyOf(all);
  }

  /** For one step of a schedule. */
  List<String> at(String step, double celsius) {
    return at(step, celsius, Set.of());
  }

  private List<String> at(String step, double celsius, Set<String> more) {
    Set<String> conditions = new HashSet<>(more);
    always(celsius).stream().map(Condition::word).forEach(conditions::add);
    return table.at(step, Collections.unmodifiableSet(conditions)).stream()
        .map(Caution::statement)
        .collect(Collectors.toUnmodifiableList());
  }

  /** What holds in this shop; who cannot tell takes it to hold. */
  private Set<Condition> always(double celsius) {
    Set<Condition> all = EnumSet.of(Condition.GAS_FORGE, Condition.KILN, Condition.INDOORS);
    if (celsius > HOT_CELSIUS) {
      all.add(Condition.HOT);
    }
    for (Steel steel : steels) {
      if (steel.analysis().percent(Element.NI) >= ALLOYED_PCT) {
        all.add(Condition.NICKEL);
      }
      if (steel.analysis().percent(Element.CR) >= ALLOYED_PCT) {
        all.add(Condition.CHROMIUM);
      }
      if (steel.hardenability().map(h -> h == Hardenability.AIR).orElse(false)) {
        all.add(Condition.AIR_HARDENING);
      }
    }
    return all;
  }
}
