package seamsoak.safety;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import seamsoak.billet.Billet;
import seamsoak.billet.Cooling;
import seamsoak.billet.Equipment;
import seamsoak.billet.Exposure;
import seamsoak.billet.Heat;
import seamsoak.billet.Jacket;
import seamsoak.billet.Step;
import seamsoak.property.hardening.QuenchantTable;
import seamsoak.source.Caution;
import seamsoak.steel.Element;
import seamsoak.steel.Hardenability;
import seamsoak.steel.Steel;

/**
 * The cautions of the steps of a billet and of its schedule.
 *
 * @param table all cautions
 * @param billet which says what the shop has
 * @param quenchants the table of them
 */
public record StepCautions(CautionTable table, Billet billet, QuenchantTable quenchants) {
  private static final double HOT_CELSIUS = 1100;

  /** Content from which a steel counts as alloyed with nickel or chromium, wt%. */
  private static final double ALLOYED_PCT = 1;

  /** For the stack, then for each step of a billet; a jacket or a can counts until it is off. */
  public List<List<Caution>> ofHistory() {
    List<List<Caution>> all = new ArrayList<>(List.of(List.of()));
    Set<Condition> wrapped = Set.of();
    for (Step step : billet.steps()) {
      if (step instanceof Step.Tile) {
        wrapped = sheet(step, wrapped);
      }
      Set<Condition> conditions = new HashSet<>(wrapped);
      if (step instanceof Step.Weld weld) {
        if (weld.facesTaken() == Exposure.COVERED) {
          conditions.add(Condition.FLUX);
        }
        if (weld.can().isPresent() || weld.facesTaken() == Exposure.SEALED) {
          wrapped = with(wrapped, Condition.SEALED_CAN);
          conditions.add(Condition.SEALED_CAN);
        }
      } else if (step instanceof Step.Restack && sealedNext(step)) {
        conditions.add(Condition.SEALED_CAN);
      }
      if (step instanceof Step.Cool cool && cool.in() == Cooling.QUENCH) {
        conditions.addAll(baths());
      }
      double hottest =
          step.heats().stream().map(Heat::at).mapToDouble(t -> t.celsius()).max().orElse(0);
      if (!step.heats().isEmpty()) {
        conditions.addAll(fire());
      }
      all.add(at(step.name(), hottest, conditions));
      if (step instanceof Step.Unjacket) {
        wrapped = Set.of();
      } else if (step instanceof Step.Grind) {
        wrapped = sheet(step, jacketOf(wrapped));
      }
    }
    return List.copyOf(all);
  }

  /** What a jacket that is still on when the schedule begins brings along. */
  public Set<Condition> leftOn() {
    Set<Condition> on = Set.of();
    for (Step step : billet.steps()) {
      on = sheet(step, on);
    }
    return on;
  }

  /** The conditions of a jacket after a step, from those before it. */
  private Set<Condition> sheet(Step step, Set<Condition> before) {
    if (step instanceof Step.Tile tile) {
      return tile.jacket().map(Jacket::coatingTaken).map(Condition::ofJacket).orElse(Set.of());
    }
    boolean off =
        step instanceof Step.Unjacket
            || step instanceof Step.Grind grind && grind.depth().metres() >= thickestSheetMetres();
    return off ? Set.of() : before;
  }

  private double thickestSheetMetres() {
    return billet.steps().stream()
        .filter(Step.Tile.class::isInstance)
        .flatMap(s -> ((Step.Tile) s).jacket().stream())
        .mapToDouble(j -> j.thickness().metres())
        .max()
        .orElse(0);
  }

  private static Set<Condition> jacketOf(Set<Condition> some) {
    Set<Condition> all = new HashSet<>(some);
    all.remove(Condition.SEALED_CAN);
    return all;
  }

  /** Whether the weld after a step is in a can, so that the pieces are laid for one. */
  private boolean sealedNext(Step step) {
    int next = step.mark().number();
    return next < billet.steps().size()
        && billet.steps().get(next) instanceof Step.Weld w
        && (w.can().isPresent() || w.facesTaken() == Exposure.SEALED);
  }

  /**
   * For a step whose heat and conditions are known.
   *
   * @param step one of {@link CautionTable#STEPS}
   * @param celsius the hottest it gets
   * @param more what holds there beside what always holds in this shop
   */
  public List<Caution> at(String step, double celsius, Set<Condition> more) {
    Set<String> words =
        with(more, always(celsius).toArray(Condition[]::new)).stream()
            .map(Condition::word)
            .collect(Collectors.toUnmodifiableSet());
    return table.at(step, words);
  }

  private static Set<Condition> with(Set<Condition> some, Condition... more) {
    Set<Condition> all = new HashSet<>(some);
    all.addAll(List.of(more));
    return all;
  }

  /** What the forge brings along. */
  public Set<Condition> fire() {
    return billet.equipment().forgeTaken() == Equipment.Forge.GAS
        ? Set.of(Condition.GAS_FORGE)
        : Set.of();
  }

  /** What the quenchants at hand bring along, when it is not said which is used. */
  private Set<Condition> baths() {
    Set<Condition> all = new HashSet<>();
    billet
        .quenchantsTaken()
        .forEach(b -> quenchants.find(b.kind()).map(Condition::ofBath).ifPresent(all::addAll));
    return all;
  }

  /** What holds at every step in this shop. */
  private Set<Condition> always(double celsius) {
    Set<Condition> all = EnumSet.noneOf(Condition.class);
    if (billet.equipment().shopTaken() == Equipment.Room.CLOSED) {
      all.add(Condition.INDOORS);
    }
    if (billet.equipment().descaleTaken() == Equipment.Descale.ACID) {
      all.add(Condition.ACID);
    }
    if (celsius > HOT_CELSIUS) {
      all.add(Condition.HOT);
    }
    for (Steel steel : billet.stack().steels()) {
      if (steel.analysis().percent(Element.NI) >= ALLOYED_PCT) {
        all.add(Condition.NICKEL);
      }
      if (steel.analysis().percent(Element.CR) >= ALLOYED_PCT) {
        all.add(Condition.CHROMIUM);
      }
      if (steel.hardenability().map(h -> h == Hardenability.AIR).orElse(false)
          || !steel.disputes().isEmpty()) {
        all.add(Condition.AIR_HARDENING);
      }
    }
    return all;
  }
}
